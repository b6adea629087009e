# The numbers that welch.test.ts, studentPooled.test.ts and paired.test.ts (tests/methods) trust: R's own t.test().
# Run: Rscript tests/reference/welch.R
source("tests/reference/trials.R")

figures <- function(name, method, confidence, test) {
  difference <- if (method == "paired") test$estimate else test$estimate[1] - test$estimate[2]
  list(trial = name, method = method, confidence = confidence, difference = unname(difference),
       low = test$conf.int[1], high = test$conf.int[2], standardError = test$stderr,
       t = unname(test$statistic), df = unname(test$parameter), pValue = test$p.value)
}

cases <- list()
for (confidence in c(0.8, 0.9, 0.95, 0.99)) {
  for (name in names(trials)) with(trials[[name]], {
    x <- as.numeric(tried); y <- as.numeric(usual)
    cases[[length(cases) + 1]] <<- figures(name, "welch", confidence, t.test(x, y, conf.level = confidence))
    cases[[length(cases) + 1]] <<- figures(name, "pooled", confidence, t.test(x, y, var.equal = TRUE, conf.level = confidence))
    if (paired) cases[[length(cases) + 1]] <<- figures(name, "paired", confidence, t.test(x, y, paired = TRUE, conf.level = confidence))
  })
}
write_reference("welch", cases)
