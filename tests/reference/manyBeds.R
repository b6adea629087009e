# Several treatments in beds, for tests/methods/manyBeds.test.ts. Run: Rscript tests/reference/manyBeds.R
#
# Data: Gomez & Gomez (1984), p. 26, rice, whole, with three plots taken out, and with two taken out of three beds so
# that every treatment keeps three; and p. 300, larvae, log10(x + 1), both
# as in agridat; the four crops in five beds of METHODS 10, item 33; R's npk, nitrogen by phosphate in its blocks, whole
# and with four plots taken out; two small sets made up; R's warpbreaks with the two wools for beds; the demo's plants. The first treatment is
# the usual. Averages over all beds by predict(); their covariance by model.matrix(); percent ranges by uniroot().
source("tests/reference/write.R")
source("tests/reference/manyShared.R")

in_beds <- function(name, y, treatment, bed) {
  d <- data.frame(y, g = factor(treatment, unique(treatment)), bed = factor(bed, unique(bed)))
  fit <- lm(y ~ bed + g, d); table <- anova(fit); df <- df.residual(fit); mse <- deviance(fit) / df
  k <- nlevels(d$g); b <- nlevels(d$bed); N <- nrow(d)
  everywhere <- expand.grid(bed = levels(d$bed), g = levels(d$g))
  m <- as.numeric(tapply(predict(fit, everywhere), everywhere$g, mean))
  rows <- t(sapply(levels(d$g), function(l) colMeans(model.matrix(~ bed + g, everywhere)[everywhere$g == l, ])))
  c <- rows %*% summary(fit)$cov.unscaled %*% t(rows)
  spread <- function(i, j, r = 1) mse * (c[j, j] + r^2 * c[i, i] - 2 * r * c[i, j])
  after <- anova(lm(y ~ g + bed, d))["bed", "Mean Sq"]
  k0 <- (N - sum(table(d$bed)^2) / N) / (b - 1)
  share <- max(0, (after - mse) / k0) / b
  contrasts <- cbind(-1, diag(k - 1))
  rho <- cov2cor(contrasts %*% c %*% t(contrasts))
  lambda <- rep(sqrt(max(0, if (k == 2) 0 else mean(rho[upper.tri(rho)]))), k - 1)
  K <- dunnett_critical(lambda, df); q <- qtukey(0.95, k, df) / sqrt(2); pairs <- combn(k, 2)
  # one least significant difference holds for all where every pair's variance is 2/n
  variances <- apply(pairs, 2, function(pair) spread(pair[1], pair[2]) / mse)
  balanced <- length(unique(table(d$g))) == 1 && isTRUE(all.equal(variances, rep(2 * k / N, ncol(pairs)), 1e-9))
  list(name = name, value = y, treatment = as.integer(d$g) - 1, bed = as.integer(d$bed) - 1, means = m, mse = mse, df = df,
       ss = table$`Sum Sq`, f = table$`F value`[1:2], p = table$`Pr(>F)`[1:2], bedShare = share,
       lsd = if (balanced) qt(0.975, df) * sqrt(2 * mse / (N / k)) else NULL, lambda = lambda[1], critical = K,
       dunnett = lapply(2:k, function(i) {
         t <- (m[i] - m[1]) / sqrt(spread(1, i))
         c(list(t = t, p = dunnett_tail(abs(t), lambda, df)),
           percent(m[1], m[i], function(r) K * sqrt(spread(1, i, r) + share * (1 - r)^2)))
       }),
       tukey = lapply(seq_len(ncol(pairs)), function(j) {
         i <- pairs[1, j]; o <- pairs[2, j]; gap <- m[o] - m[i]; se <- sqrt(spread(i, o))
         list(one = i - 1, other = o - 1, difference = gap, low = gap - q * se, high = gap + q * se,
              p = ptukey(sqrt(2) * abs(gap) / se, k, df, lower.tail = FALSE))
       }))
}

rice <- c(5113, 5398, 5307, 4678, 5346, 5952, 4719, 4264, 5272, 5713, 5483, 4749, 5164, 4831, 4986, 4410,
          4804, 4848, 4432, 4748, 5254, 4542, 4919, 4098)
larvae <- c(9, 4, 6, 9, 27, 35, 1, 10, 4, 12, 8, 15, 6, 17, 28, 0, 0, 10,
            0, 5, 6, 4, 10, 2, 0, 2, 15, 1, 1, 2, 5, 10, 15, 0, 1, 5)
crops <- c(32, 34, 33, 35, 37, 34, 33, 36, 37, 35, 31, 34, 35, 32, 36, 29, 26, 30, 28, 29)
demo <- read.csv("tests/reference/demoPlants.csv", colClasses = "character")
demo <- demo[grepl("^[0-9]+$", demo$grams), ]
demo <- demo[order(match(demo$treatment, c("Bare soil", "Straw", "Woodchip", "Grass clippings")), demo$bed), ]
without <- function(name, out, y, treatment, bed) in_beds(name, y[-out], treatment[-out], bed[-out])

four <- c(19.16, 22.26, 21.53, 18.94, 23.25, 24.08, 27.14, 22.66, 19.26, 19.92, 19.83, 15.21, 23.09, 24.77, 26.57, 24.66)
six <- c(4.43, 4.37, 3.35, 3.29, 2.71, 3.64, 2.03, 2.05, 3.17, 3.9, 3.3, 3.02)

write_reference("manyBeds", list(
  in_beds("four in four beds", four, rep(c("control", "A", "B", "C"), 4), rep(1:4, each = 4)),
  in_beds("two in six beds", six, rep(c("control", "new"), 6), rep(1:6, each = 2)),
  in_beds("rice", rice, rep(1:6, each = 4), rep(1:4, 6)),
  without("rice without three plots", c(2, 11, 24), rice, rep(1:6, each = 4), rep(1:4, 6)),
  without("rice, equal numbers in incomplete beds", c(1, 5, 10, 14, 19, 23), rice, rep(1:6, each = 4), rep(1:4, 6)),
  in_beds("larvae, logarithms", log10(larvae + 1), rep(1:9, 4), rep(1:4, each = 9)),
  in_beds("four crops in five beds", crops, rep(1:4, each = 5), rep(1:5, 4)),
  with(npk, in_beds("npk, nitrogen by phosphate", yield, paste(N, P), block)),
  with(npk, without("npk without four plots", c(3, 8, 14, 15), yield, paste(N, P), block)),
  with(warpbreaks, without("warpbreaks without five", c(1, 2, 20, 33, 54), breaks, tension, wool)),
  with(demo, in_beds("demo", as.numeric(grams), treatment, bed))))
