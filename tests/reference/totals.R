# Two totals without a record of each plant, for tests/methods/countRatio, totalsRatio and tests/functions/totalsOnly.
# Run: Rscript tests/reference/totals.R
#
# The exact range is R's poisson.test for two counts; the range with a taken
# unevenness is the log ratio with the variances of an over-dispersed count (or of a weight), written out here.
source("tests/reference/write.R")

pairs <- list(
  berries = c(412, 30, 655, 30), berries_fine = c(412, 30, 640, 29), nets = c(655, 30, 640, 29),
  beans = c(24, 2, 72, 2), few = c(3, 30, 6, 30), lopsided = c(2, 5, 4000, 7), one = c(1, 1, 1, 1),
  fewer = c(655, 30, 412, 30), level = c(100, 10, 100, 10), none_usual = c(0, 2, 5, 2), none_new = c(5, 2, 0, 2),
  none_of_many = c(0, 100, 3, 100), radiation = c(30, 54308.7, 60, 51477.5), huge = c(2e6, 1500, 2.2e6, 1400))

# R gets the ratio from a share as share / (1 - share), which loses digits where the share is near 1: ask for the small
# one and turn it over.
exact <- function(x, confidence) {
  over <- x[3] / x[4] > x[1] / x[2]
  first <- if (over) 1:2 else 3:4
  test <- poisson.test(x[c(first[1], 4 - first[1])], x[c(first[2], 6 - first[2])], conf.level = confidence)
  ends <- if (over) 1 / test$conf.int[2:1] else test$conf.int[1:2]
  list(ratio = unname(if (over) 1 / test$estimate else test$estimate), low = ends[1], high = ends[2])
}
taken <- function(x, unevenness, counts, confidence) {
  part <- function(total, plants) if (counts) max(1, unevenness^2 * total / plants) / total else unevenness^2 / plants
  ratio <- (x[3] / x[4]) / (x[1] / x[2])
  reach <- qnorm(1 - (1 - confidence) / 2) * sqrt(part(x[1], x[2]) + part(x[3], x[4]))
  list(low = ratio * exp(-reach), high = ratio * exp(reach))
}
real_below <- function(x, confidence)
  abs(log((x[3] / x[4]) / (x[1] / x[2]))) / (qnorm(1 - (1 - confidence) / 2) * sqrt(1 / x[2] + 1 / x[4]))

case <- function(x) {
  both <- x[1] > 0 && x[3] > 0
  c(list(totals = x, exact = exact(x, 0.95), exact99 = exact(x, 0.99)),
    if (both) list(counts35 = taken(x, 0.35, TRUE, 0.95), counts60 = taken(x, 0.6, TRUE, 0.95),
      weights35 = taken(x, 0.35, FALSE, 0.95), weights20at90 = taken(x, 0.2, FALSE, 0.9),
      real_below = real_below(x, 0.95)))
}
write_reference("totals", lapply(pairs, case))
