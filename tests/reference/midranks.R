# The numbers that midranks.test.ts and rankTest.test.ts (tests/methods) trust: R's rank(), ties counted by table(), and
# the p of wilcox.test()'s normal approximation. The variance of W comes from the ranks' own variance, as for any sample
# drawn without replacement, and not from the formula with the ties. Run: Rscript tests/reference/midranks.R
source("tests/reference/trials.R")

pieces <- function(name) with(trials[[name]], {
  all <- as.numeric(c(usual, tried)); m <- length(tried); n <- length(usual)
  ranks <- rank(all); groups <- as.numeric(table(all))
  list(trial = name, ranks = ranks, tieSum = sum(groups^3 - groups),
       distance = sum(tail(ranks, m)) - m * (m + n + 1) / 2, variance = m * n / (m + n) * var(ranks),
       pValue = wilcox.test(as.numeric(tried), as.numeric(usual), exact = FALSE, correct = TRUE)$p.value)
})

write_reference("midranks", lapply(c("ties", "spraysCA", "spraysAB", "warp", "farApart", "nearZero", "alike"), pieces))
