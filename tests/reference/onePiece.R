# The numbers that the tests of single pieces trust: separateRatio, pooledRatio, pairedRatio, chanceHere.
# Data: R's own PlantGrowth (ctrl as the usual, trt2 as the new). Run: Rscript tests/reference/onePiece.R
source("tests/reference/write.R")

plants <- split(PlantGrowth$weight, PlantGrowth$group)
usual <- plants$ctrl
tried <- plants$trt2

g <- function(variance, df) qt(0.975, df)^2 * variance / length(usual) / mean(usual)^2
pooled <- (var(usual) + var(tried)) / 2
welch <- t.test(tried, usual)
power <- function(difference, error, df, confidence) {
  critical <- qt(1 - (1 - confidence) / 2, df)
  pt(critical, df, difference / error, lower.tail = FALSE) + pt(-critical, df, difference / error)
}

write_reference("onePiece", list(
  usual = usual, tried = tried,
  welchP = welch$p.value, studentP = t.test(tried, usual, var.equal = TRUE)$p.value,
  pairedP = t.test(tried, usual, paired = TRUE)$p.value,
  welchG = g(var(usual), 9), pooledG = g(pooled, 18), pairedG = g(var(usual), 9),
  standardError = welch$stderr, df = unname(welch$parameter),
  chance = list(
    list(difference = 0.494, confidence = 0.95, chance = power(0.494, welch$stderr, welch$parameter, 0.95)),
    list(difference = 1.2, confidence = 0.9, chance = power(1.2, welch$stderr, welch$parameter, 0.9)))))
