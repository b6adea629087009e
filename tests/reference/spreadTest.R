# The numbers that tests/methods/spreadTest.test.ts trusts: R's own var.test().
# Run: Rscript tests/reference/spreadTest.R
# Each group is taken as a share of its average first.
source("tests/reference/trials.R")

cases <- lapply(Filter(function(name) min(sapply(trials[[name]][c("usual", "tried")], mean)) > 0, names(trials)), function(name) {
  usual <- as.numeric(trials[[name]]$usual)
  tried <- as.numeric(trials[[name]]$tried)
  list(trial = name, pValue = var.test(usual / mean(usual), tried / mean(tried))$p.value)
})
write_reference("spreadTest", cases)
