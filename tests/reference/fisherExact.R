# Fisher's exact test by R, for tests/numerics/hypergeometric.test.ts. Run: Rscript tests/reference/fisherExact.R
source("tests/reference/write.R")

tables <- list(c(3, 1, 1, 3), c(0, 8, 1, 7), c(0, 8, 4, 4), c(10, 2, 3, 15), c(1, 0, 0, 1), c(0, 0, 3, 5), c(2, 10, 15, 3),
               c(5, 5, 5, 5), c(0, 30, 6, 24), c(100, 900, 150, 850), c(4, 16, 9, 11), c(7, 12, 0, 5), c(300, 1, 280, 25),
               c(2, 3, 6, 4), c(1, 11, 2, 10), c(9, 1, 1, 999))
write_reference("fisherExact", lapply(tables, function(counts) {
  list(counts = counts, p = fisher.test(matrix(counts, 2, byrow = TRUE))$p.value)
}))
