# What the formulas of the practice sheet must show: the demo trial's plants by base R, no code of ours.
# Run from the project's folder: Rscript tests/reference/practiceCells.R
source("tests/reference/write.R")

bare <- c(2252, 3203, 2264, 2705, 3242, 2787, 4152, 3542)
straw <- c(3249, 4245, 3972, NA, 2494, 4278, 6923, 5293)
grass <- c(3423, NA, 2611, 4474, 2174, 3589, 3673, 3863)

lived <- function(x) x[!is.na(x)]

# Share of all ways of dealing the labels anew that set the averages at least as far apart.
label_swap <- function(a, b) {
  all <- c(a, b)
  gaps <- combn(length(all), length(a), function(i) mean(all[-i]) - mean(all[i]))
  mean(abs(gaps) >= abs(mean(b) - mean(a)) - 1e-9 * max(abs(gaps)))
}

# Power for +30 % where the spread is 25 % of each average, the usual average being 1: R's own power.t.test with the
# two spreads pooled (degrees of freedom 2n - 2).
pooled <- 0.25 * sqrt((1 + 1.3^2) / 2)
chance <- function(n) power.t.test(n, delta = 0.3, sd = pooled, strict = TRUE)$power
needed <- Find(function(n) chance(n) >= 0.8, 2:500)

welch <- t.test(lived(straw), bare)
pairs <- !is.na(straw)
paired <- t.test(straw[pairs], bare[pairs], paired = TRUE)

# The extra harvest in kilograms sold at 2.50, less 1.10 of extra cost a plant: bed by bed.
extra <- t.test((straw[pairs] - bare[pairs]) / 1000)
left <- function(kilograms) 2.5 * kilograms - 1.1

write_reference("practiceCells", list(
  change = mean(lived(straw)) / mean(bare) - 1,
  welch = list(t = unname(welch$statistic), df = unname(welch$parameter), p = welch$p.value),
  welchDifference = list(low = welch$conf.int[1], high = welch$conf.int[2]),
  paired = list(t = unname(paired$statistic), df = unname(paired$parameter), p = paired$p.value),
  pairedChange = mean(straw[pairs]) / mean(bare[pairs]) - 1,
  labelSwap = label_swap(bare, lived(straw)),
  labelSwapTwoPlants = label_swap(c(11, 13), c(34, 38)),
  grassLived = mean(lived(grass)),
  grassSetOut = sum(lived(grass)) / length(grass),
  unevennessBare = sd(bare) / mean(bare),
  setOutPerTreatment = ceiling(needed / 0.9),
  chanceOfSixEach = chance(6),
  worth = list(
    left = left(unname(extra$estimate)), low = left(extra$conf.int[1]), high = left(extra$conf.int[2]),
    breakEvenChange = 1.1 / 2.5 / mean(bare[pairs] / 1000), nextYear = 120 * left(unname(extra$estimate))
  )
))
