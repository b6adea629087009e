# Functions that manyOneWay.R and manyBeds.R share: Dunnett's integral and the percent range. Writes nothing.

# P(max |T| > d) for correlations l_i l_j: Dunnett (1955), nested adaptive integration
dunnett_tail <- function(d, lambda, df) {
  outside <- function(s) vapply(s, function(s) integrate(function(z) dnorm(z) * (1 - Reduce(`*`, lapply(lambda, function(l) {
    own <- sqrt(1 - l^2); pnorm((d * s - l * z) / own) - pnorm((-d * s - l * z) / own)
  }))), -9, 9, rel.tol = 1e-11, subdivisions = 400)$value, 0)
  weighted <- function(s) 2 * df * s * dchisq(df * s^2, df) * outside(s)
  edge <- sqrt(qchisq(c(1e-15, 0.5), df) / df)
  top <- sqrt(qchisq(1e-15, df, lower.tail = FALSE) / df)
  sum(mapply(function(a, b) integrate(weighted, a, b, rel.tol = 1e-10, subdivisions = 400)$value, edge, c(edge[2], top)))
}
dunnett_critical <- function(lambda, df) if (length(lambda) == 1) qt(0.975, df) else
  uniroot(function(d) dunnett_tail(d, lambda, df) - 0.05, qt(1 - c(0.025, 0.02 / length(lambda)), df), tol = 1e-11)$root

# The nearest roots of |b - r a| = reach(r) on either side of the ratio seen, as percents over 100; null for none.
percent <- function(a, b, reach) {
  h <- function(r) abs(b - r * a) - reach(r)
  seen <- b / a; start <- range(seen, if (h(1) <= 0) 1)
  root <- function(from, factor, last) {
    repeat {
      to <- from * factor
      if (if (factor < 1) to < 1e-6 * seen else to > 1e6 * max(1, seen)) to <- last
      if (is.infinite(to) || from == 0) return(NULL)
      if (h(to) > 0) return(uniroot(h, sort(c(from, to)), tol = 1e-15 * seen)$root - 1)
      from <- to
    }
  }
  if (!(a > 0 && b >= 0)) return(list(percentLow = NULL, percentHigh = NULL))
  list(percentLow = root(start[1], exp(-0.02), 0), percentHigh = root(start[2], exp(0.02), Inf))
}
