# The numbers that the tests of several treatments trust. Data: R's own PlantGrowth, InsectSprays, warpbreaks and npk;
# the six rice rates in four beds of Gomez & Gomez (1984), p. 26; and the demo's plants (demoPlants.csv).
# Base R gives models, F, adjusted averages, Tukey and Welch's F. Dunnett's p is the product-correlation integral of
# Dunnett (1955), by integrate(). Run: Rscript tests/reference/manyTreatments.R
source("tests/reference/write.R")

dunnett <- function(d, lambda, df) {
  spread <- function(s) sapply(s, function(one) {
    inner <- function(z) dnorm(z) * Reduce(`*`, lapply(lambda, function(l)
      pnorm((d * one - l * z) / sqrt(1 - l^2)) - pnorm((-d * one - l * z) / sqrt(1 - l^2))))
    integrate(inner, -Inf, Inf, rel.tol = 1e-11)$value
  })
  density <- function(s) exp(log(2) + df / 2 * log(df / 2) - lgamma(df / 2) + (df - 1) * log(s) - df * s^2 / 2)
  1 - integrate(function(s) spread(s) * density(s), 0, Inf, rel.tol = 1e-10)$value
}
critical <- function(lambda, df) uniroot(function(d) dunnett(d, lambda, df) - 0.05, c(1, 9), tol = 1e-10)$root

model <- function(name, value, treatment, bed = NULL) {
  treatment <- factor(treatment, levels = unique(treatment)); k <- nlevels(treatment)
  fit <- if (is.null(bed)) lm(value ~ treatment) else lm(value ~ factor(bed) + treatment)
  table <- anova(fit); mse <- deviance(fit) / df.residual(fit); df <- df.residual(fit)
  grid <- if (is.null(bed)) data.frame(treatment = levels(treatment)) else
    expand.grid(bed = unique(bed), treatment = levels(treatment))
  grid$treatment <- factor(grid$treatment, levels = levels(treatment))
  rows <- if (is.null(bed)) model.matrix(~ treatment, grid) else {
    m <- model.matrix(~ factor(bed, levels = levels(factor(bed))) + treatment, data.frame(bed = factor(grid$bed, levels = levels(factor(bed))), treatment = grid$treatment)); m }
  average <- t(sapply(levels(treatment), function(l) colMeans(rows[grid$treatment == l, , drop = FALSE])))
  means <- as.numeric(average %*% coef(fit)); c <- average %*% summary(fit)$cov.unscaled %*% t(average)
  variance <- function(i, j) c[i, i] + c[j, j] - 2 * c[i, j]
  others <- 2:k; n <- as.numeric(table(treatment))
  rho <- function(i, j) (c[i, j] - c[i, 1] - c[j, 1] + c[1, 1]) / sqrt(variance(i, 1) * variance(j, 1))
  lambda <- if (is.null(bed)) sqrt(n[others] / (n[others] + n[1])) else {
    pairs <- if (k > 2) combn(others, 2, function(p) rho(p[1], p[2])) else 0
    rep(sqrt(max(0, mean(pairs))), k - 1) }
  t <- sapply(others, function(i) (means[i] - means[1]) / sqrt(mse * variance(i, 1)))
  pairs <- combn(k, 2)
  tukey <- apply(pairs, 2, function(p) {
    q <- abs(means[p[2]] - means[p[1]]) / sqrt(mse * variance(p[1], p[2]) / 2)
    list(one = p[1] - 1, other = p[2] - 1, difference = means[p[2]] - means[p[1]], p = ptukey(q, k, df, lower.tail = FALSE)) })
  order <- rownames(table)
  treat <- table[order == "treatment", ]
  share <- 0
  if (!is.null(bed)) {
    b <- length(unique(bed)); sizes <- as.numeric(table(bed = factor(bed)) )
    after <- anova(lm(value ~ treatment + factor(bed)))["factor(bed)", "Mean Sq"]
    sizes <- as.numeric(tapply(value, bed, length)); k0 <- (sum(sizes) - sum(sizes^2) / sum(sizes)) / (b - 1)
    share <- max(0, (after - mse) / k0) / b
  }
  list(name = name, value = value, treatment = as.integer(treatment) - 1,
       bed = if (is.null(bed)) rep(0, length(value)) else as.integer(factor(bed, levels = unique(bed))) - 1, beds = !is.null(bed),
       means = means, mse = mse, df = df, f = treat$`F value`, p = treat$`Pr(>F)`, ssTreatments = treat$`Sum Sq`,
       ssBeds = if (is.null(bed)) 0 else table["factor(bed)", "Sum Sq"], bedShare = share,
       t = t, dunnettP = sapply(abs(t), dunnett, lambda, df), dunnettCritical = critical(lambda, df), tukey = tukey,
       welchF = if (is.null(bed)) unname(oneway.test(value ~ treatment)$statistic) else 0,
       welchP = if (is.null(bed)) oneway.test(value ~ treatment)$p.value else 0)
}

demo <- read.csv("tests/reference/demoPlants.csv")
demo <- demo[grepl("^[0-9]+$", demo$grams), ]; demo$grams <- as.numeric(as.character(demo$grams))
first <- c("Bare soil", "Straw", "Woodchip", "Grass clippings")
demo <- demo[order(match(demo$treatment, first), demo$bed), ]
rice <- c(5113, 5398, 5307, 4678, 5346, 5952, 4719, 4264, 5272, 5713, 5483, 4749, 5164, 4831, 4986, 4410,
          4804, 4848, 4432, 4748, 5254, 4542, 4919, 4098)
pain <- list(c(24.5, 23.5, 26.28, 26.4, 27.1, 29.9, 30.1, 30.1), c(28.4, 34.2, 29.5, 32.2, 30.1), c(26.1, 28.3, 24.3, 26.2, 27.8))

write_reference("manyTreatments", list(
  with(PlantGrowth, model("PlantGrowth", weight, group)),
  with(InsectSprays, model("InsectSprays", count, spray)),
  with(warpbreaks, model("warpbreaks tension", breaks, tension)),
  model("unequal numbers", unlist(pain), rep(1:3, lengths(pain))),
  with(demo, model("Marlpit Corner", grams, treatment)),
  with(demo, model("Marlpit Corner in beds", grams, treatment, bed)),
  model("Gomez rice in beds", rice, rep(seq(25, 150, 25), each = 4), rep(1:4, 6)),
  with(npk, model("npk nitrogen in beds", yield, N, block))))
