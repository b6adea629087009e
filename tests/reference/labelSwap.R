# The counts that labelSwap.test.ts and signFlip.test.ts (tests/methods) trust: every relabeling enumerated in R.
# Run: Rscript tests/reference/labelSwap.R
source("tests/reference/trials.R")

hits <- function(d, seen) sum(abs(d) >= abs(seen) - 1e-9 * max(abs(d)))

splits <- function(A, B) {
  z <- c(A, B); z <- z - mean(z); k <- length(A); n <- length(z)
  chosen <- combn(n, k); sums <- colSums(matrix(z[chosen], k))
  d <- (sum(z) - sums) / (n - k) - sums / k
  list(hits = hits(d, mean(B) - mean(A)), tried = length(d))
}

flips <- function(d) {
  signs <- as.matrix(expand.grid(rep(list(c(-1, 1)), length(d))))
  sums <- as.numeric(signs %*% d) / length(d)
  list(hits = hits(sums, mean(d)), tried = length(sums))
}

cases <- list()
for (name in names(trials)) with(trials[[name]], {
  A <- as.numeric(usual); B <- as.numeric(tried)
  if (choose(length(A) + length(B), length(A)) <= 3e6) cases[[length(cases) + 1]] <<- c(list(trial = name, method = "splits"), splits(A, B))
  if (paired && length(A) <= 15) cases[[length(cases) + 1]] <<- c(list(trial = name, method = "flips"), flips(B - A))
})
write_reference("labelSwap", cases)
