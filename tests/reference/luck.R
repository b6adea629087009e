# Eight courgette plants all treated alike (invented), dealt into two teams of four by draw numbers 1 to 20: the gap
# between the teams for each number, and the share of all 70 ways of dealing with a gap of 30 percent or more.
# Run from the project's folder: Rscript tests/reference/luck.R
source("tests/reference/write.R")
source("tests/reference/generator.R")
source("tests/reference/lots.R")

plants <- c(2640, 3710, 1980, 3060, 4150, 2290, 3480, 2750)
# How far the leading team is ahead of the other.
lead <- function(one, other) max(one, other) / min(one, other) - 1
gap <- function(a) lead(mean(plants[a]), mean(plants[!a]))
drawn <- function(number) gap(plan(c("A", "B"), 4, number)$order == "A")
every <- combn(8, 4, function(i) gap(seq_along(plants) %in% i))

# METHODS 11: two teams of four where single plants vary by 25 percent, over 200 000 trials.
set.seed(20231)
teams <- function() lead(mean(rnorm(4, 1, 0.25)), mean(rnorm(4, 1, 0.25)))
trials <- replicate(200000, teams())

gaps <- vapply(1:20, drawn, 0)
write_reference("luck", list(
  plants = plants, unevenness = sd(plants) / mean(plants), gaps = gaps,
  wide = sum(gaps >= 0.3), widest = max(gaps),
  shareOfAllDeals = mean(every >= 0.3),
  shareOfTrials = mean(trials >= 0.3)
))
