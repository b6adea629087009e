# Money left per plant from R's own data, for tests/functions/worthIt. Run: Rscript tests/reference/moneyLeft.R
#
# The ranges are t.test's for the difference, times the price, less the cost. Data: PlantGrowth (Dobson 1983, dried
# plants in grams) as separate plants, sleep (Student 1908) as pairs; prices and costs are made up.
source("tests/reference/write.R")

left <- function(usual, new, price, cost, paired) {
  test <- t.test(new, usual, paired = paired)
  extra <- mean(new) - mean(usual)
  list(usual = usual, new = new, price = price, extra_cost = cost, extra = extra, worth = price * extra,
    left = price * extra - cost, low = price * test$conf.int[1] - cost, high = price * test$conf.int[2] - cost,
    cost_of_extra = cost / extra, break_even = cost / price, break_even_change = cost / price / mean(usual))
}
by_group <- split(PlantGrowth$weight, PlantGrowth$group)
drugs <- split(sleep$extra, sleep$group)
write_reference("moneyLeft", list(
  separate = left(by_group$ctrl, by_group$trt2, 2.5, 0.4, FALSE),
  cheaper = left(by_group$ctrl, by_group$trt1, 2.5, -1.2, FALSE),
  pays = left(by_group$trt1, by_group$trt2, 4, 0.5, FALSE),
  pairs = left(drugs[[1]] + 4, drugs[[2]] + 4, 3, 1.25, TRUE)))
