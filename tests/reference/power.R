# The numbers that power.test.ts, plantsNeeded.test.ts, smallestChange.test.ts and chanceEnough.test.ts (tests/methods)
# trust: R's power.t.test() and, for spread that grows with the yield, R's non-central pt(). Rows, columns named below.
# Run: Rscript tests/reference/power.R
source("tests/reference/write.R")

rows <- function(grid, f) lapply(seq_len(nrow(grid)), function(i) I(unname(c(unlist(grid[i, ]), do.call(f, as.list(grid[i, ]))))))

# R's own planner: equal spread, any alpha
classic <- function(type) rows(expand.grid(n = c(2, 3, 5, 12, 50, 200), delta = c(0.1, 0.3, 0.8, 1.5, 3), alpha = c(0.01, 0.05, 0.1)),
  function(n, delta, alpha) power.t.test(n = n, delta = delta, sd = 1, sig.level = alpha, type = type, strict = TRUE)$power)
needed <- function(type) rows(expand.grid(delta = c(0.2, 0.25, 0.3, 0.5, 0.7, 0.8, 1, 1.5, 2, 3), power = c(0.5, 0.7, 0.8, 0.9, 0.95)),
  function(delta, power) {
    at <- function(n) power.t.test(n = n, delta = delta, sd = 1, type = type, strict = TRUE)$power
    n <- 2; while (at(n) < power) n <- n + 1; n })

# spread that grows with the yield; b = 0 separate plants, -1 one each, else so many beds
alpha_of <- function(k) 0.05 / (k - 1)
df_of <- function(n, k, b) k * n - ifelse(b == 0, 1, ifelse(b < 0, n, b)) - k + 1
pw <- function(p, c, n, k, b) {
  df <- df_of(n, k, b); t <- qt(alpha_of(k) / 2, df, lower.tail = FALSE); ncp <- abs(p) / (c * sqrt((1 + (1 + p)^2) / n))
  pt(t, df, ncp, lower.tail = FALSE) + pt(-t, df, ncp) }
need <- function(p, c, k, b, chance) { n <- 2; while (df_of(n, k, b) < 1 || pw(p, c, n, k, b) < chance) n <- n + 1; n }
smallest <- function(n, c, k, b, chance, up) {
  f <- function(size) pw(up * size, c, n, k, b) - chance; far <- if (up > 0) 4.99 else 0.99
  if (f(far) < 0) NA else up * uniroot(f, c(1e-9, far), tol = 1e-15, maxiter = 1000)$root }
enough <- function(p, c, n, k, b, W) {
  df <- df_of(n, k, b); s <- if (p < 0) -1 else 1; r <- 1 + s * W
  pt(qt(alpha_of(k) / 2, df, lower.tail = FALSE), df, s * (1 + p - r) / (c * sqrt(((1 + p)^2 + r^2) / n)), lower.tail = FALSE) }

layouts <- expand.grid(k = c(2, 4, 7), b = c(0, -1, 2))
with_layouts <- function(...) merge(expand.grid(...), layouts, by = NULL)
allowed <- function(grid) grid[df_of(grid$n, grid$k, grid$b) >= 1 & (grid$b <= 0 | grid$n %% pmax(grid$b, 1) == 0), ]

write_reference("power", list(
  classicTwoSample = classic("two.sample"), classicPaired = classic("paired"),
  neededTwoSample = needed("two.sample"), neededPaired = needed("paired"),
  power = rows(allowed(with_layouts(p = c(-0.6, -0.2, 0.1, 0.5, 2), c = c(0.1, 0.35), n = c(2, 4, 10, 40))), pw),
  needed = rows(with_layouts(p = c(-0.5, -0.2, 0.25, 0.5, 1), c = c(0.15, 0.3, 0.4), chance = c(0.5, 0.8, 0.95)),
    function(p, c, chance, k, b) need(p, c, k, b, chance)),
  smallest = rows(allowed(with_layouts(n = c(2, 4, 6, 8, 20), c = c(0.15, 0.3, 0.35), chance = c(0.5, 0.8), up = c(1, -1))),
    function(n, c, chance, up, k, b) smallest(n, c, k, b, chance, up)),
  enough = rows(allowed(with_layouts(p = c(-0.6, -0.2, 0.1, 0.5, 2), c = c(0.1, 0.35), n = c(4, 10), W = c(0.05, 0.2))),
    function(p, c, n, W, k, b) enough(p, c, n, k, b, W))))
