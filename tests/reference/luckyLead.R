# How often luck alone sets two teams of plants treated alike so far apart that one leads by a given share or more:
# the integral over the trailing team's average, no closed form. For comparison METHODS 11's case by 200 000 trials.
# Run from the project's folder: Rscript tests/reference/luckyLead.R
source("tests/reference/write.R")

chance <- function(each, unevenness, lead) {
  deviation <- unevenness / sqrt(each)
  beaten <- function(a) dnorm(a, 1, deviation) * pnorm((1 + lead) * a, 1, deviation, lower.tail = FALSE)
  ends <- c(max(0, 1 - 12 * deviation), 1, 1 + 12 * deviation)
  parts <- vapply(1:2, function(i) integrate(beaten, ends[i], ends[i + 1], rel.tol = 1e-12, subdivisions = 2000L)$value, 0)
  list(each = each, unevenness = unevenness, lead = lead, chance = 2 * sum(parts))
}

asked <- expand.grid(each = c(3, 4, 8, 20), unevenness = c(0.1, 0.25, 0.4), lead = c(0.05, 0.3, 1))
# Averages below zero, which the closed form would count, lie eight deviations away or further.
asked <- asked[asked$unevenness / sqrt(asked$each) <= 0.125, ]

set.seed(20232)
lead <- function(one, other) max(one, other) / min(one, other) - 1
trials <- replicate(200000, lead(mean(rnorm(4, 1, 0.25)), mean(rnorm(4, 1, 0.25))))

write_reference("luckyLead", list(
  chances = unname(Map(chance, asked$each, asked$unevenness, asked$lead)),
  shareOfTrials = mean(trials >= 0.3)
))
