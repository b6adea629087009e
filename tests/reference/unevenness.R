# The numbers that unevenness.test.ts, withinBeds.test.ts and oddValues.test.ts (tests/methods) trust, from open data.
# Run: Rscript tests/reference/unevenness.R
source("tests/reference/write.R")

cv <- function(x) sd(x) / mean(x)
limits <- function(share, df) share * sqrt(df / qchisq(c(0.9, 0.1), df))

pooled <- function(name, values, groups) {
  parts <- split(values, groups, drop = TRUE); weights <- lengths(parts) - 1
  own <- vapply(parts, cv, 0)
  all <- sqrt(sum((weights * own^2)[weights > 0]) / sum(weights))
  list(name = name, groups = unname(lapply(parts, I)), own = I(unname(own)), ownLow = I(unname(mapply(function(c, w) limits(c, w)[1], own, weights))),
       ownHigh = I(unname(mapply(function(c, w) limits(c, w)[2], own, weights))), df = sum(weights), unevenness = all,
       low = limits(all, sum(weights))[1], high = limits(all, sum(weights))[2])
}

beds <- function(name, value, treatment, bed) {
  treatment <- factor(treatment); bed <- factor(bed)
  model <- if (nlevels(treatment) > 1) lm(value ~ bed + treatment) else lm(value ~ bed)
  list(name = name, value = I(value), treatment = I(as.integer(treatment)), bed = I(as.integer(bed)),
       df = df.residual(model), unevenness = summary(model)$sigma / mean(value))
}

robust_scores <- function(x) {
  spread <- mad(x, constant = 1)
  if (length(x) >= 10 && spread > 0) 0.6745 * abs(x - median(x)) / spread else 0 * x
}

odd <- function(name, x) {
  score <- if (all(x > 0)) pmin(robust_scores(x), robust_scores(log(x))) else robust_scores(x)
  list(name = name, values = I(x), odd = I(which(x >= 5 * median(x) | score > 5) - 1))
}

missing <- function(frame, rows) frame[-rows, ]
orchard <- transform(OrchardSprays, bed = rowpos)
holes <- missing(orchard, c(3, 17, 18, 40, 64))
npkHoles <- missing(npk, c(2, 9, 24))

write_reference("unevenness", list(
  pooled = with(list(), list(
    pooled("R PlantGrowth", PlantGrowth$weight, PlantGrowth$group),
    pooled("R InsectSprays", InsectSprays$count, InsectSprays$spray),
    pooled("R chickwts", chickwts$weight, chickwts$feed),
    pooled("R OrchardSprays, rows missing", holes$decrease, holes$treatment),
    pooled("R ToothGrowth, by supplement and dose", ToothGrowth$len, interaction(ToothGrowth$supp, ToothGrowth$dose)))),
  beds = list(
    with(sleep, beds("R sleep: drugs within patients", extra, group, ID)),
    with(orchard, beds("R OrchardSprays: treatments within rows", decrease, treatment, bed)),
    with(holes, beds("R OrchardSprays, five missing", decrease, treatment, bed)),
    with(npk, beds("R npk: nitrogen within blocks", yield, N, block)),
    with(npkHoles, beds("R npk, three missing", yield, N, block)),
    with(npk, beds("R npk: one treatment, blocks only", yield, rep(1, 24), block))),
  odd = list(
    odd("R rivers", as.numeric(rivers)), odd("R islands", as.numeric(islands)), odd("R precip", as.numeric(precip)),
    odd("R InsectSprays C", InsectSprays$count[InsectSprays$spray == "C"]),
    odd("R OrchardSprays A", orchard$decrease[orchard$treatment == "A"]),
    odd("R PlantGrowth trt1", PlantGrowth$weight[PlantGrowth$group == "trt1"]),
    odd("R airquality, ozone in May", as.numeric(na.omit(airquality$Ozone[airquality$Month == 5]))))))
