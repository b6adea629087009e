# What single plants drawn by lot must look like, for tests/calibration/plants/*.test.ts.
# Run: Rscript tests/reference/plantDraws.R
# Gamma, negative-binomial and lognormal plants by their average and unevenness (standard deviation / average).
source("tests/reference/write.R")

shares <- c(0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99)

gamma_plants <- function(mean, unevenness) {
  list(kind = "gamma", mean = mean, unevenness = unevenness,
       quantiles = qgamma(shares, shape = unevenness^-2, scale = mean * unevenness^2))
}

lognormal_plants <- function(mean, unevenness) {
  v <- log(1 + unevenness^2)
  list(kind = "lognormal", mean = mean, unevenness = unevenness, quantiles = qlnorm(shares, log(mean) - v / 2, sqrt(v)))
}

# Counts and the chance of at most so many, to one in a million from either end, to hold the walk against.
counted_plants <- function(mean, unevenness) {
  size <- mean^2 / ((unevenness * mean)^2 - mean)
  ends <- qnbinom(c(1e-6, 1 - 1e-6), size = size, mu = mean)
  counts <- unique(round(seq(ends[1], ends[2], length.out = 25)))
  list(mean = mean, unevenness = unevenness, counts = counts, below = pnbinom(counts, size = size, mu = mean))
}

write_reference("plantDraws", list(
  shares = shares,
  weights = list(
    gamma_plants(1000, 0.2), gamma_plants(1000, 0.5), gamma_plants(1500, 1),
    lognormal_plants(1000, 0.2), lognormal_plants(1000, 0.5), lognormal_plants(1, 0.3)
  ),
  counted = list(counted_plants(40, 0.2), counted_plants(40, 0.5), counted_plants(20, 0.35), counted_plants(80, 1.2))
))
