# Two-group trials that several tests share: numbers only, with where they come from.
# Run: Rscript tests/reference/trials.R   (or source it; sourcing gives the list `trials`)
source("tests/reference/write.R")

of <- function(values, groups, group) values[groups == group]
trial <- function(usual, tried, paired, source) list(usual = I(usual), tried = I(tried), paired = paired, source = source)

trials <- list(
  # open data that come with R
  plantGrowth1 = with(PlantGrowth, trial(of(weight, group, "ctrl"), of(weight, group, "trt1"), TRUE, "R PlantGrowth: trt1 v ctrl")),
  plantGrowth2 = with(PlantGrowth, trial(of(weight, group, "ctrl"), of(weight, group, "trt2"), TRUE, "R PlantGrowth: trt2 v ctrl")),
  sleep = with(sleep, trial(of(extra, group, 1), of(extra, group, 2), TRUE, "Student (1908); R sleep")),
  toothGrowth = with(ToothGrowth[ToothGrowth$dose == 1, ], trial(of(len, supp, "VC"), of(len, supp, "OJ"), TRUE, "R ToothGrowth, dose 1: OJ v VC")),
  spraysDC = with(InsectSprays, trial(of(count, spray, "C"), of(count, spray, "D"), FALSE, "R InsectSprays: D v C")),
  spraysCA = with(InsectSprays, trial(of(count, spray, "C"), of(count, spray, "A"), TRUE, "R InsectSprays: A v C")),
  spraysAB = with(InsectSprays, trial(of(count, spray, "A"), of(count, spray, "B"), FALSE, "R InsectSprays: B v A")),
  chicks = with(chickwts, trial(of(weight, feed, "linseed"), of(weight, feed, "sunflower"), TRUE, "R chickwts: sunflower v linseed")),
  warp = with(warpbreaks, trial(of(breaks, wool, "B"), of(breaks, wool, "A"), TRUE, "R warpbreaks: wool A v B")),
  darwin = trial(
    c(17.375, 20.375, 20, 20, 18.375, 18.625, 18.625, 15.25, 16.5, 18, 16.25, 18, 12.75, 15.5, 18),
    c(23.5, 12, 21, 22, 19.125, 21.5, 22.125, 20.375, 18.25, 21.625, 23.25, 21, 22.125, 23, 12),
    TRUE, "Darwin (1876), maize, crossed v self-fertilised; Fisher (1935); agridat darwin.maize"),
  shoes = with(MASS::shoes, trial(A, B, TRUE, "Box, Hunter & Hunter, boys' shoes; R MASS shoes")),
  permeability = trial(c(1.15, 0.88, 0.90, 0.74, 1.21), c(0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46),
    FALSE, "Hollander & Wolfe (1973), p. 69; R help page of wilcox.test"),
  depression = trial(c(0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29), c(1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30),
    TRUE, "Hollander & Wolfe (1973), p. 29; R help page of wilcox.test"),
  # numbers drawn by R's generator and rounded, kept as numbers: each is a hard case
  beds6 = trial(c(3.21, 2.84, 3.36, 2.79, 3.16, 2.5), c(3.24, 3.68, 3.06, 3.51, 3.56, 3.99), TRUE, "hard case: pairs that run against each other"),
  unequal = trial(c(11.24, 11.2, 10.9, 10.25, 10.55, 11.9, 11.44, 10.12, 9.37), c(12.72, 15.14, 6.59, 19.93), FALSE, "hard case: 4 v 9, spread 4 v 1"),
  three = trial(c(0.97, 0.63, 0.98), c(1.04, 1.21, 0.97), TRUE, "hard case: three each"),
  two = trial(c(4.64, 3.69), c(4.65, 5.63), TRUE, "hard case: two each"),
  ties = trial(c(230, 260, 240, 230, 180, 210, 220, 210, 200, 230), c(200, 230, 260, 300, 260, 270, 260, 220, 260, 240, 200, 240), FALSE, "hard case: rounded to tens, many ties"),
  offset = trial(
    c(1000001.133, 1000000.611, 999999.856, 1000000.641, 1000000.812, 1000000.129, 1000000.444, 1000000.216),
    c(999999.719, 999999.841, 999999.998, 1000000.191, 999999.952, 1000000.217, 999999.774, 1000000.396),
    TRUE, "hard case: far from zero"),
  counts = trial(c(8, 11, 13, 13, 9, 10, 8, 12, 13, 14), c(7, 2, 7, 3, 4, 7, 6, 8, 5, 3), TRUE, "hard case: small counts"),
  farApart = trial(c(9.96, 10.07, 9.98, 9.94, 9.97, 10.05, 10.03, 10, 10.01, 9.98), c(19.99, 19.98, 20, 20, 20, 20.06, 20.03, 20.02, 20.05, 20), TRUE, "hard case: tiny p"),
  nearZero = trial(c(0.13, 1.49, -0.03, -1.29, -0.07, 1.59, -0.17, -0.42), c(-1.45, 2.39, 1.2, 3.46, -0.24, 0.86, 1.5, 1.15), TRUE, "hard case: usual average hardly above 0"),
  oneSteady = trial(c(4.1, 4.6, 4.4, 4.9), c(5, 5, 5, 5), TRUE, "hard case: one group does not vary"),
  alike = trial(c(1, 2, 3, 5), c(2, 1, 5, 3), TRUE, "hard case: equal averages"),
  skewed = trial(c(1.35, 1.64, 1.43, 5.51, 2.31, 2.94, 0.71), c(3.13, 2.23, 2.25, 0.68, 2.45, 2.96, 1.11, 1.48, 1.54), FALSE, "hard case: skewed"),
  thirty = trial(
    c(123.3, 102.1, 118.7, 98.4, 104.1, 92.1, 113.5, 114.3, 116.8, 102.1, 112.9, 99.6, 96.1, 100.5, 132, 102.8, 113.6, 80, 119.3, 117.5, 101, 104.8, 95.4, 103.5, 81.7, 94.9, 87.2, 100),
    c(98.3, 139.1, 92.2, 76.6, 86.1, 92.2, 122.7, 109.8, 105.3, 112.8, 88.8, 86.9, 100.4, 131.1, 95.3, 124.6, 120.3, 100.7, 99.1, 110.1, 106.7, 137.5, 108.2, 80.5, 94.2, 94.2, 86.2, 110.4, 121.5, 110.8),
    FALSE, "hard case: 30 v 28"))

paired_trials <- Filter(function(t) t$paired, trials)

if (sys.nframe() == 0) write_reference("trials", trials)
