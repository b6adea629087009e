# Separate plants of several treatments, for tests/methods/manyOneWay.test.ts. Run: Rscript tests/reference/manyOneWay.R
#
# Data: R's own chickwts, ToothGrowth, PlantGrowth, InsectSprays, warpbreaks; NIST/SEMATECH e-Handbook 7.4.7.1; the
# pain-relief times, Dunnett's (1955) blood counts, the three-a-group set, Thomson & Short's (1969) half-times and the
# Games-Howell example that SciPy's tests print; five small sets made up. The first treatment is the usual.
# R gives aov(), TukeyHSD(), oneway.test(); Dunnett's p is the product-correlation integral by integrate() and,
# random beyond two comparisons, multcomp's; Games-Howell from ptukey() and qtukey(); percent ranges by uniroot() on
# |b - r a| = K sqrt(V(r)), null where there is no root.
source("tests/reference/write.R")
suppressPackageStartupMessages(library(multcomp))
source("tests/reference/manyShared.R")

one_way <- function(name, groups) {
  names(groups) <- sprintf("g%02d", seq_along(groups)); k <- length(groups)
  d <- data.frame(y = unlist(groups), g = factor(rep(names(groups), lengths(groups))))
  fit <- aov(y ~ g, d); table <- anova(fit); df <- df.residual(fit); mse <- deviance(fit) / df
  n <- unname(lengths(groups)); m <- unname(sapply(groups, mean)); v <- unname(sapply(groups, var)) / n
  lambda <- sqrt(n[-1] / (n[-1] + n[1])); K <- dunnett_critical(lambda, df)
  set.seed(1)
  glht_p <- if (k == 2) summary(fit)[[1]][1, 5] else summary(glht(fit, linfct = mcp(g = "Dunnett")),
    test = adjusted("single-step", maxpts = 1e6, abseps = 1e-6, releps = 0))$test$pvalues
  tukey <- TukeyHSD(fit)[[1]]; pairs <- combn(k, 2)
  own <- oneway.test(y ~ g, d)
  holm <- p.adjust(apply(pairs, 2, function(p) 2 * pt(-abs(diff(m[p])) / sqrt(mse * sum(1 / n[p])), df)), "holm")
  list(name = name, groups = unname(lapply(groups, I)), means = m, mse = mse, df = df, ss = table$`Sum Sq`,
       f = table[1, 4], p = table[1, 5], welch = list(f = unname(own$statistic), df = unname(own$parameter[2]), p = own$p.value),
       critical = K,
       dunnett = lapply(2:k, function(i) {
         se <- sqrt(mse * (1 / n[i] + 1 / n[1])); t <- (m[i] - m[1]) / se
         c(list(t = t, p = dunnett_tail(abs(t), lambda, df), multcomp = as.numeric(glht_p)[i - 1]),
           percent(m[1], m[i], function(r) K * sqrt(mse * (1 / n[i] + r^2 / n[1]))))
       }),
       tukey = lapply(seq_len(ncol(pairs)), function(j) {
         p <- pairs[, j]; q <- abs(diff(m[p])) / sqrt((v[p[1]] + v[p[2]]) / 2)
         own_df <- function(r) (v[p[2]] + r^2 * v[p[1]])^2 / (v[p[2]]^2 / (n[p[2]] - 1) + r^4 * v[p[1]]^2 / (n[p[1]] - 1))
         reach <- function(r) qtukey(0.95, k, own_df(r)) / sqrt(2) * sqrt(v[p[2]] + r^2 * v[p[1]])
         list(one = p[1] - 1, other = p[2] - 1, difference = tukey[j, "diff"], low = tukey[j, "lwr"],
              high = tukey[j, "upr"], p = tukey[j, "p adj"],
              own = c(list(df = own_df(1), p = ptukey(q, k, own_df(1), lower.tail = FALSE),
                           low = diff(m[p]) - reach(1), high = diff(m[p]) + reach(1)),
                      percent(m[p[1]], m[p[2]], reach)))
       }))
}

ache <- list(c(24.5, 23.5, 26.4, 27.1, 29.9), c(28.4, 34.2, 29.5, 32.2, 30.1), c(26.1, 28.3, 24.3, 26.2, 27.8))
write_reference("manyOneWay", list(
  one_way("chickwts", split(chickwts$weight, chickwts$feed)),
  one_way("ToothGrowth, doses", split(ToothGrowth$len, ToothGrowth$dose)),
  one_way("ToothGrowth, supplement by dose", split(ToothGrowth$len, ToothGrowth[c("supp", "dose")])),
  one_way("PlantGrowth", split(PlantGrowth$weight, PlantGrowth$group)),
  one_way("InsectSprays", split(InsectSprays$count, InsectSprays$spray)),
  one_way("warpbreaks, tension", split(warpbreaks$breaks, warpbreaks$tension)),
  one_way("e-Handbook 7.4.7.1", list(c(6.9, 5.4, 5.8, 4.6, 4.0), c(8.3, 6.8, 7.8, 9.2, 6.5), c(8.0, 10.5, 8.1, 6.9, 9.3),
                                     c(5.8, 3.8, 6.1, 5.6, 6.2))),
  one_way("pain relief, five each", ache),
  one_way("pain relief, eight and five", c(list(c(24.5, 23.5, 26.28, 26.4, 27.1, 29.9, 30.1, 30.1)), ache[2:3])),
  one_way("blood counts", list(c(7.4, 8.5, 7.2, 8.24, 9.84, 8.32), c(9.76, 8.8, 7.68, 9.36), c(12.8, 9.68, 12.16, 9.2, 10.55))),
  one_way("three a group", list(c(55, 47, 48), c(55, 64, 64), c(55, 49, 52), c(50, 44, 41))),
  one_way("mucociliary half-times", list(c(2.9, 3.0, 2.5, 2.6, 3.2), c(3.8, 2.7, 4.0, 2.4), c(2.8, 3.4, 3.7, 2.2, 2.0))),
  one_way("Games-Howell example", list(c(24, 23, 31, 51), c(34, 18, 18, 26), c(17, 68, 59, 7))),
  one_way("three groups of five", list(c(9.93, 11.07, 9.79, 9.84, 9.45), c(13.1, 10.04, 10.57, 12.32, 12.94),
                                       c(10.82, 12.28, 11.59, 9.61, 11.16))),
  one_way("four unequal groups", list(c(4.39, 2.6, 3.18, 2.3, 2.23, 2.56), c(4.09, 3.33, 3.39, 3.97),
                                      c(2.71, 3.33, 2.74, 3.35, 2.64), c(5.12, 3.46, 4.57))),
  one_way("five groups, one very uneven", list(c(58.5, 48.4, 53.6, 44.8), c(52.3, 53.1, 47.1, 41.3), c(52.9, 52.7, 53.5, 69),
                                               c(53.1, 55.7, 49.4, 45.6), c(60.9, 91.4, 75.7, 58.5))),
  one_way("two groups of four", list(c(3.28, 2.05, 3.6, 3.49), c(3.81, 4.02, 4.07, 4.52))),
  one_way("eight groups of three", list(c(5.56, 5.5, 4.95), c(5.66, 5.19, 6.26), c(5.17, 5.21, 5.71), c(5.67, 5.1, 4.41),
                                        c(5.91, 5.46, 6.55), c(5.03, 5.5, 4.58), c(5.56, 6.03, 7.31), c(6.52, 6.88, 6.75)))))
