# Processor time of R's own routines, in milliseconds a call, as JSON; loops inside one process. For bench.ts, which runs it.
processor <- function() sum(proc.time()[c("user.self", "sys.self")])

per_call <- function(work, least = 0.2, rounds = 15) {
  work()
  times <- replicate(rounds, {
    calls <- 0
    start <- processor()
    repeat {
      work()
      calls <- calls + 1
      spent <- processor() - start
      if (spent >= least) break
    }
    1000 * spent / calls
  })
  times
}

set.seed(1)
x <- runif(8, 40, 60)
y <- runif(8, 40, 60)
pool <- runif(20, 40, 60)
seen <- mean(pool[1:10]) - mean(pool[11:20])
trial <- data.frame(
  grams = runif(32, 40, 60),
  mulch = factor(rep(c("bare", "straw", "bark", "leaves"), 8), levels = c("bare", "straw", "bark", "leaves")),
  bed = factor(rep(1:8, each = 4))
)
combn_shuffle <- function() {
  gaps <- (2 * colSums(combn(pool, 10)) - sum(pool)) / 10
  mean(abs(gaps) >= abs(seen) - 1e-9)
}

found <- list(
  version = R.version.string,
  welch = per_call(function() t.test(x, y)),
  combn10 = per_call(combn_shuffle, least = 0, rounds = 5),
  power = per_call(function() power.t.test(delta = 10, sd = 12.5, power = 0.8)),
  ptukey = per_call(function() ptukey(3.5, 4, 21, lower.tail = FALSE))
)
if (requireNamespace("multcomp", quietly = TRUE)) {
  found$multcompVersion <- as.character(packageVersion("multcomp"))
  found$multcomp <- per_call(function() {
    fit <- aov(grams ~ bed + mulch, data = trial)
    several <- multcomp::glht(fit, linfct = multcomp::mcp(mulch = "Dunnett"))
    list(summary(several), confint(several))
  }, least = 0)
}
json <- vapply(found, function(value) {
  if (is.character(value)) sprintf("\"%s\"", value) else sprintf("[%s]", paste(signif(value, 6), collapse = ", "))
}, "")
cat(sprintf("{%s}\n", paste(sprintf("\"%s\": %s", names(json), json), collapse = ", ")))
