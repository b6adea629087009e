# Tails and quantiles of the distributions, for tests/numerics. Run: Rscript tests/reference/distributions.R
#
# distributions.csv holds the questions and their true answers to 25 digits: facts computed with 256-bit arithmetic
# (continued fractions and series; quantiles by Newton's method), independent of R and of this project. The rows of
# the studentized range are a trapezoidal double integral in doubles, checked against mpmath (17 digits).
# This script adds R's own answer. Where R is known to be less exact, tests/numerics/distributions.ts says so.
source("tests/reference/write.R")

in_r <- list(
  t_upper_tail = function(t, df, ...) pt(t, df, lower.tail = FALSE),
  t_quantile = function(p, df, ...) qt(p, df),
  normal_lower = function(x, ...) pnorm(x),
  normal_quantile = function(p, ...) qnorm(p),
  f_upper_tail = function(x, d1, d2, ...) pf(x, d1, d2, lower.tail = FALSE),
  f_quantile = function(p, d1, d2, ...) qf(p, d1, d2),
  chisq_upper_tail = function(x, df, ...) pchisq(x, df, lower.tail = FALSE),
  chisq_quantile = function(p, df, ...) qchisq(p, df),
  incomplete_beta = function(x, a, b, ...) pbeta(x, a, b),
  beta_quantile = function(p, a, b, ...) qbeta(p, a, b),
  poisson_lower = function(k, mean, ...) ppois(k, mean),
  poisson_upper = function(k, mean, ...) ppois(k, mean, lower.tail = FALSE),
  binomial_lower = function(k, n, p, ...) pbinom(k, n, p),
  noncentral_t_upper = function(t, df, ncp, ...) pt(t, df, ncp, lower.tail = FALSE),
  noncentral_f_upper = function(x, d1, d2, ncp) pf(x, d1, d2, ncp, lower.tail = FALSE),
  studentized_range_upper = function(q, k, df, ...) ptukey(q, k, df, lower.tail = FALSE))

table <- read.csv("tests/reference/distributions.csv", colClasses = c(truth = "character"))
answers <- lapply(split(table, factor(table$distribution, unique(table$distribution))), function(rows) {
  lapply(seq_len(nrow(rows)), function(i) {
    given <- as.numeric(rows[i, c("a", "b", "c", "d")])
    r <- suppressWarnings(do.call(in_r[[rows$distribution[i]]], as.list(given)))
    list(given = I(given[!is.na(given)]), r = r, truth = rows$truth[i])
  })
})
write_reference("distributions", answers)
