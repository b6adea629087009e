# The ranges that tests/methods/percentRange.test.ts trusts, computed apart from our own code:
# pooled and paired from the roots of Fieller's quadratic; separate plants by qt() and uniroot().
# A limit that does not exist is null. Run: Rscript tests/reference/percentRange.R
source("tests/reference/trials.R")

# The part of {r >= 0: f(r) <= 0} that holds the ratio seen, or all from it to 1 when 1 belongs to the set.
# `breaks` are the places where f changes sign, `changes` the same less 1.
piece <- function(f, seen, breaks, changes) {
  start <- if (f(1) <= 0) range(1, seen) else c(seen, seen)
  below <- changes[breaks > 0 & breaks < start[1]]; above <- changes[breaks > start[2] & breaks <= 1e6 * max(1, seen)]
  list(low = if (length(below)) max(below) else NA, high = if (length(above)) min(above) else NA)
}

# In s = r - 1, so that averages far from zero lose nothing: the gap is D - s mA, its variance vD + 2 s (vA - cAB) + s^2 vA.
fieller <- function(mA, D, vA, vD, cAB, K) {
  a <- mA^2 - K^2 * vA; b <- D * mA + K^2 * (vA - cAB); c <- D^2 - K^2 * vD; d <- b^2 - a * c
  roots <- if (d < 0) numeric(0) else { q <- b + (if (b < 0) -1 else 1) * sqrt(d); c(q / a, c / q) }
  piece(function(r) a * (r - 1)^2 - 2 * b * (r - 1) + c, 1 + D / mA, 1 + roots, roots)
}

pivot <- function(A, B, confidence) {
  nA <- length(A); nB <- length(B); mA <- mean(A); mB <- mean(B); vA <- var(A) / nA; vB <- var(B) / nB
  h <- function(r) {
    v <- vB + r^2 * vA; df <- v^2 / (vB^2 / (nB - 1) + r^4 * vA^2 / (nA - 1))
    abs(mB - r * mA) - qt((1 - confidence) / 2, df, lower.tail = FALSE) * sqrt(v)
  }
  seen <- mB / mA
  grid <- c(seen * 1.005^(-2800:0), seen * 1.005^(1:2800), 1); grid <- sort(unique(grid))
  signs <- sign(vapply(grid, h, 0)); at <- which(signs[-1] * signs[-length(signs)] < 0)
  roots <- vapply(at, function(i) uniroot(h, grid[c(i, i + 1)], tol = 1e-15, maxiter = 500)$root, 0)
  piece(h, seen, roots, roots - 1)
}

cases <- list()
for (confidence in c(0.9, 0.95, 0.99)) for (name in names(trials)) with(trials[[name]], {
  A <- as.numeric(usual); B <- as.numeric(tried); nA <- length(A); nB <- length(B)
  add <- function(method, limits) cases[[length(cases) + 1]] <<- c(list(trial = name, method = method, confidence = confidence), limits)
  K <- function(df) qt((1 - confidence) / 2, df, lower.tail = FALSE)
  s2 <- ((nA - 1) * var(A) + (nB - 1) * var(B)) / (nA + nB - 2)
  add("separate", pivot(A, B, confidence))
  add("pooled", fieller(mean(A), mean(B) - mean(A), s2 / nA, s2 / nA + s2 / nB, 0, K(nA + nB - 2)))
  if (paired) add("paired", fieller(mean(A), mean(B - A), var(A) / nA, var(B - A) / nA, cov(A, B) / nA, K(nA - 1)))
})
write_reference("percentRange", cases)
