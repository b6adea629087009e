# Dunnett's distribution, two-sided, for tests/numerics/dunnett.test.ts. Run: Rscript tests/reference/dunnettTails.R
#
# dunnettTails.csv holds critical values (x = alpha, equal counts) and tails (x = d, counts n against n0), computed by
# a trapezoidal double integral that agrees with mpmath to 1e-15 (facts, not from R).
# This script adds R's tail by nested adaptive integration of the product form, at the critical value or at d, and
# the multivariate t of mvtnorm, which is random beyond two comparisons and comes with its own error estimate.
source("tests/reference/write.R")
set.seed(1955)

inside <- function(w, lambda) {
  given_z <- function(z) dnorm(z) * apply(outer(z, lambda, function(z, l) {
    pnorm((w - l * z) / sqrt(1 - l^2)) - pnorm((-w - l * z) / sqrt(1 - l^2))
  }), 1, prod)
  2 * integrate(given_z, 0, 9, rel.tol = 1e-11)$value
}
tail <- function(d, lambda, df) {
  density <- function(s) 2 * df * s * dchisq(df * s^2, df)
  given_s <- function(s) density(s) * vapply(s, function(s) 1 - inside(d * s, lambda), 0)
  edges <- sqrt(qchisq(c(1e-16, 0.5), df) / df)
  upper <- sqrt(qchisq(1e-16, df, lower.tail = FALSE) / df)
  sum(mapply(function(a, b) integrate(given_s, a, b, rel.tol = 1e-10, subdivisions = 400)$value,
             c(0, edges), c(edges, upper)))
}

table <- read.csv("tests/reference/dunnettTails.csv", colClasses = c(n = "character"))
write_reference("dunnettTails", lapply(seq_len(nrow(table)), function(i) {
  row <- table[i, ]
  n <- as.numeric(strsplit(row$n, " ")[[1]])
  lambda <- sqrt(n / (n + row$n0))
  d <- if (row$kind == "tail") row$x else row$value
  correlation <- outer(lambda, lambda)
  diag(correlation) <- 1
  multivariate <- mvtnorm::pmvt(rep(-d, length(n)), rep(d, length(n)), df = row$df, corr = correlation,
                                algorithm = mvtnorm::GenzBretz(maxpts = 1e5, abseps = 1e-6))
  list(kind = row$kind, x = row$x, df = row$df, lambda = I(lambda), precise = row$value,
       r = tail(d, lambda, row$df), mvtnorm = 1 - as.numeric(multivariate), mvtnormError = attr(multivariate, "error"))
}))
