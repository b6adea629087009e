# Quantiles of the studentized range by R, for tests/numerics/studentizedRange.test.ts.
# Run: Rscript tests/reference/rangeQuantiles.R
# R's qtukey() stops when q moves by less than 1e-4 and rests on ptukey(), which is rough for few df: the test allows
# for both.
source("tests/reference/write.R")

grid <- expand.grid(k = c(2, 3, 4, 6, 8, 12), df = c(3, 5, 8, 12, 16, 27, 60, 120, Inf), alpha = c(0.1, 0.05, 0.01))
write_reference("rangeQuantiles", lapply(seq_len(nrow(grid)), function(i) {
  row <- grid[i, ]
  list(k = row$k, df = row$df, alpha = row$alpha, r = qtukey(row$alpha, row$k, row$df, lower.tail = FALSE))
}))
