# Plans drawn by lot by the recipe written a second time in R, and the thresholds of the tests of chance.
# Run: Rscript tests/reference/drawLots.R
source("tests/reference/write.R")
source("tests/reference/generator.R")
source("tests/reference/lots.R")

mulches <- c("Bare soil", "Straw", "Woodchip", "Grass clippings")
write_reference("drawLots", list(
  plans = list(
    plan(mulches, 8, 1431, 8),
    plan(c("Bare soil", "Straw"), 6, 1431),
    plan(c("Bare soil", "Straw"), 8, 1431, 8),
    plan(c("A", "B", "C"), 4, 0, 2),
    plan(c("A", "B"), 5, -42),
    plan(LETTERS[1:20], 3, 999999999999999, 3),
    plan(c("A", "B"), 1, 7)
  ),
  # What a chi-square of equally likely orders stays below in all but one of a thousand such tests: 4! orders of one of
  # each of four, and the six orders of two each of two.
  orders24 = qchisq(0.999, 23),
  orders6 = qchisq(0.999, 5)
))
