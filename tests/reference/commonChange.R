# The change common to several trials, for tests/methods/commonChange and tests/functions/manyTrials.
# Run: Rscript tests/reference/commonChange.R
#
# R's t.test on logs. Data: barley yields of ten varieties in 1931 and 1932 (Immer et al. 1934, in R's lattice as
# "barley"), averages over six sites; and the three ratios of the project's contract, METHODS 10 item 54.
source("tests/reference/write.R")

common <- function(usual, new, confidence) {
  test <- t.test(log(new / usual), conf.level = confidence)
  list(usual = usual, new = new, confidence = confidence, change = unname(expm1(test$estimate)),
    low = expm1(test$conf.int[1]), high = expm1(test$conf.int[2]), ahead = sum(new > usual))
}
yields <- tapply(lattice::barley$yield, lattice::barley[c("variety", "year")], mean)
first <- yields[, "1931"]
second <- yields[, "1932"]
write_reference("commonChange", list(
  item54 = common(rep(1, 3), c(1.3, 1.1, 1.25), 0.95),
  barley = common(unname(first), unname(second), 0.95),
  turned = common(unname(second), unname(first), 0.95),
  two = common(unname(first[1:2]), unname(second[1:2]), 0.95),
  at_ninety = common(unname(first), unname(second), 0.9)))
