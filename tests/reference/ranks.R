# The numbers that rankSum.test.ts and signedRank.test.ts (tests/methods) trust. Without ties and within our limits:
# R's exact wilcox.test(). Beyond our limits: its normal approximation with continuity correction. With ties, where R
# offers no exact test: every arrangement of the midranks enumerated. Run: Rscript tests/reference/ranks.R
source("tests/reference/trials.R")

two_sided <- function(all, seen) min(1, 2 * min(mean(all <= seen), mean(all >= seen)))

rank_sum <- function(A, B) {
  r <- rank(c(B, A)); m <- length(B); W <- sum(r[seq_len(m)]) - m * (m + 1) / 2
  exact <- choose(length(r), m) <= 3e6; ties <- anyDuplicated(r) > 0
  p <- if (exact && ties) two_sided(combn(2 * r, m, sum), 2 * sum(r[seq_len(m)]))
       else wilcox.test(B, A, exact = exact, correct = TRUE)$p.value
  list(statistic = W, pValue = p, exact = exact, ties = ties)
}

# differences are rounded so that 0.3 - 0.2 and 0.2 - 0.1 tie, as they do on paper
signed_rank <- function(A, B) {
  d <- round(B - A, 9); d <- d[d != 0]; r <- rank(abs(d)); V <- sum(r[d > 0])
  exact <- length(d) <= 20; ties <- anyDuplicated(r) > 0
  p <- if (exact && ties) two_sided(as.numeric(as.matrix(expand.grid(rep(list(0:1), length(d)))) %*% (2 * r)), 2 * V)
       else wilcox.test(d, exact = exact, correct = TRUE)$p.value
  list(statistic = V, pValue = p, exact = exact, ties = ties)
}

cases <- list()
for (name in names(trials)) with(trials[[name]], {
  A <- as.numeric(usual); B <- as.numeric(tried)
  cases[[length(cases) + 1]] <<- c(list(trial = name, method = "rankSum"), rank_sum(A, B))
  if (paired) cases[[length(cases) + 1]] <<- c(list(trial = name, method = "signedRank"), signed_rank(A, B))
})
write_reference("ranks", cases)
