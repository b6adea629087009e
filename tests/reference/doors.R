# What the worksheet functions must answer for data that others published, for tests/functions.
# Run: Rscript tests/reference/doors.R
#
# R's own t.test, fisher.test and pt answer where they can; the percent range is found by turning R's t test around
# with uniroot (METHODS 5.2), label swaps and rank tests by looking at every relabeling with combn and expand.grid.
source("tests/reference/write.R")

handbook_demo <- read.csv("tests/reference/demoPlants.csv")
mulch <- function(name) with(handbook_demo, grams[treatment == name])

sets <- list(
  # Student (1908): R's sleep
  sleep = list(usual = sleep$extra[sleep$group == 1], new = sleep$extra[sleep$group == 2], pairs = TRUE),
  # Dobson: R's PlantGrowth
  plantGrowth1 = with(PlantGrowth, list(usual = weight[group == "ctrl"], new = weight[group == "trt1"], pairs = FALSE)),
  plantGrowth2 = with(PlantGrowth, list(usual = weight[group == "ctrl"], new = weight[group == "trt2"], pairs = FALSE)),
  # Box, Hunter & Hunter's shoes: MASS
  shoes = list(usual = MASS::shoes$A, new = MASS::shoes$B, pairs = TRUE),
  # Hollander & Wolfe: R's help of wilcox.test
  permeability = list(usual = c(1.15, 0.88, 0.90, 0.74, 1.21),
    new = c(0.80, 0.83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, 0.73, 1.46), pairs = FALSE),
  depression = list(usual = c(0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29),
    new = c(1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30), pairs = TRUE),
  tiny3 = list(usual = c(12, 15, 11), new = c(18, 21, 19), pairs = FALSE),
  straw = list(usual = mulch("Bare soil"), new = na.omit(mulch("Straw")), pairs = FALSE),
  grass = list(usual = mulch("Bare soil"), new = na.omit(mulch("Grass clippings")), pairs = FALSE),
  strawInBeds = list(usual = mulch("Bare soil")[!is.na(mulch("Straw"))], new = na.omit(mulch("Straw")), pairs = TRUE))

tested <- function(test) list(t = unname(test$statistic), df = unname(test$parameter), p = test$p.value,
  low = test$conf.int[1], high = test$conf.int[2])

# |mB - r mA| = K(r) sqrt(V(r)), first crossing on either side of the ratio seen
crossings <- function(ratio, excess) {
  side <- function(to) {
    steps <- exp(seq(log(ratio), log(to), length.out = 4001))
    at <- which(sapply(steps, excess) > 0)
    if (length(at) == 0) return(NULL)
    uniroot(excess, sort(steps[at[1] - 0:1]), tol = 1e-14)$root - 1
  }
  list(low = side(1e-6 * ratio), high = side(1e6 * max(1, ratio)))
}

percent_welch <- function(a, b, conf) {
  va <- var(a) / length(a); vb <- var(b) / length(b)
  crossings(mean(b) / mean(a), function(r) {
    v <- vb + r^2 * va
    df <- v^2 / (vb^2 / (length(b) - 1) + r^4 * va^2 / (length(a) - 1))
    abs(mean(b) - r * mean(a)) - qt(1 - (1 - conf) / 2, df) * sqrt(v)
  })
}
percent_student <- function(a, b, conf) {
  df <- length(a) + length(b) - 2
  s2 <- ((length(a) - 1) * var(a) + (length(b) - 1) * var(b)) / df
  crossings(mean(b) / mean(a), function(r)
    abs(mean(b) - r * mean(a)) - qt(1 - (1 - conf) / 2, df) * sqrt(s2 * (1 / length(b) + r^2 / length(a))))
}
percent_paired <- function(a, b, conf) crossings(mean(b) / mean(a), function(r)
  abs(mean(b) - r * mean(a)) - qt(1 - (1 - conf) / 2, length(a) - 1) * sqrt(var(b - r * a) / length(a)))

swapped <- function(a, b) {
  all <- c(a, b) - mean(c(a, b))
  sums <- colSums(combn(all, length(b)))
  mean(abs(sums) >= abs(sum(b - mean(c(a, b)))) - 1e-9 * max(abs(sums)))
}
signs <- function(n) as.matrix(expand.grid(rep(list(c(-1, 1)), n)))
flipped <- function(d) { s <- signs(length(d)) %*% d; mean(abs(s) >= abs(sum(d)) - 1e-9 * max(abs(s))) }
two_tails <- function(all, seen) min(1, 2 * min(mean(all <= seen + 1e-9), mean(all >= seen - 1e-9)))
rank_sum <- function(a, b) {
  ranks <- rank(c(a, b))
  w <- function(sum) sum - length(b) * (length(b) + 1) / 2
  seen <- w(sum(ranks[-seq_along(a)]))
  list(statistic = seen, p = two_tails(w(colSums(combn(ranks, length(b)))), seen))
}
signed_rank <- function(a, b) {
  d <- round((b - a), 9); d <- d[d != 0]
  ranks <- rank(abs(d))
  list(statistic = sum(ranks[d > 0]), p = two_tails(((signs(length(d)) + 1) / 2) %*% ranks, sum(ranks[d > 0])))
}

two <- lapply(sets, function(set) {
  a <- as.numeric(set$usual); b <- as.numeric(set$new); whole <- mean(a) > 0 && mean(b) > 0
  percent <- function(range, conf) if (whole) range(a, b, conf)
  answers <- list(usual = a, new = b,
    welch = c(tested(t.test(b, a)), percent = list(percent(percent_welch, .95))),
    welch80 = c(tested(t.test(b, a, conf.level = .8)), percent = list(percent(percent_welch, .8))),
    student = c(tested(t.test(b, a, var.equal = TRUE)), percent = list(percent(percent_student, .95))),
    swap = swapped(a, b), ranks = rank_sum(a, b), cv = c(sd(a) / mean(a), sd(b) / mean(b)))
  if (set$pairs) answers <- c(answers, list(
    paired = c(tested(t.test(b, a, paired = TRUE)), percent = list(percent(percent_paired, .95))),
    flip = flipped(b - a), signedRanks = signed_rank(a, b)))
  answers
})

# Unevenness (METHODS 8.3): pooled within treatments, and within beds by lm; 80 % ranges from chi-square.
uneven <- function(share, df) list(share = share, low = share * sqrt(df / qchisq(.9, df)), high = share * sqrt(df / qchisq(.1, df)))
alive <- na.omit(handbook_demo)
groups <- split(alive$grams, factor(alive$treatment, unique(alive$treatment)))
own <- lapply(groups, function(x) c(list(plants = length(x), mean = mean(x), sd = sd(x)), uneven(sd(x) / mean(x), length(x) - 1),
  list(middle = median(x), lowest = min(x), highest = max(x))))
df <- sum(lengths(groups) - 1)
fit <- lm(grams ~ factor(bed) + treatment, alive)
unevenness <- list(treatments = own,
  pooled = uneven(sqrt(sum(sapply(groups, function(x) (length(x) - 1) * var(x) / mean(x)^2)) / df), df),
  withinBeds = uneven(sqrt(deviance(fit) / df.residual(fit)) / mean(alive$grams), df.residual(fit)))

# Plans (METHODS 5.2): the t test of one treatment against the usual, spread growing with the yield.
planned <- function(p, n, c, k = 2, b = 1, w = 0.1) {
  df <- k * n - b - k + 1; crit <- qt(1 - .05 / (k - 1) / 2, df); side <- sign(p) + (p == 0)
  ncp <- abs(p) / (c * sqrt((1 + (1 + p)^2) / n))
  r <- 1 + side * w
  list(change = p, plants = n, unevenness = c, treatments = k, beds = b, worthwhile = w,
    see = pt(crit, df, ncp, lower.tail = FALSE) + pt(-crit, df, ncp),
    enough = pt(crit, df, side * (1 + p - r) / (c * sqrt(((1 + p)^2 + r^2) / n)), lower.tail = FALSE))
}
chances <- list(planned(.5, 6, .3), planned(.25, 10, .2), planned(1, 2, .3), planned(-.3, 8, .25), planned(-.3, 8, .25, w = .2),
  planned(.4, 8, .3, k = 4), planned(.4, 8, .3, k = 4, b = 8), planned(.4, 8, .3, k = 3, b = 4), planned(.5, 6, .35, k = 2, b = 6))
smallest <- function(n, c, chance = .8, k = 2, b = 1, direction = 1)
  list(plants = n, unevenness = c, chance = chance, treatments = k, beds = b, direction = direction,
    change = direction * uniroot(function(p) planned(direction * p, n, c, k, b)$see - chance,
      c(1e-9, if (direction > 0) 4.99 else .99), tol = 1e-14)$root)
changes <- list(smallest(8, .3), smallest(6, .35), smallest(8, .3, direction = -1), smallest(12, .2, .9), smallest(8, .3, k = 4, b = 8),
  smallest(8, .25, k = 3, b = 4, direction = -1))

fisher <- function(...) fisher.test(matrix(c(...), 2))$p.value
losses <- list(list(lost = c(0, 1), kept = c(8, 7), p = fisher(0, 8, 1, 7)), list(lost = c(1, 5), kept = c(7, 3), p = fisher(1, 7, 5, 3)))

write_reference("doors", list(two = two, unevenness = unevenness, chances = chances, smallest = changes, losses = losses))
