# What the clean pick log of our own demo garden, Marlpit Corner (demoLogClean.csv), comes to: shares of the last seven
# days, running harvest per plant set out, and the day on which half of each plant's harvest was in.
source("tests/reference/write.R")

log <- read.csv("tests/reference/demoLogClean.csv")
log$day <- as.integer(as.Date(log$date)) + 25569L # Excel's number
mulches <- unique(log$mulch)
by_mulch <- function(rows) as.vector(tapply(log$grams[rows], factor(log$mulch[rows], levels = mulches), sum))
all_rows <- rep(TRUE, nrow(log))

# set out: eight plants of each mulch; steps of seven days from the first pick on, the last day as the last step
steps <- sort(unique(c(seq(min(log$day), max(log$day), by = 7), max(log$day))))
running <- lapply(steps, function(step) {
  sums <- by_mulch(log$day <= step)
  ifelse(is.na(sums), 0, sums) / 8
})

half_day <- function(rows) {
  sums <- tapply(rows$grams, rows$day, sum)
  as.integer(names(sums)[which(cumsum(sums) >= sum(sums) / 2)[1]]) - min(log$day)
}
halves <- sapply(split(log, log$plant), half_day)

write_reference("picks", list(
  mulches = mulches,
  lastWeek = by_mulch(log$day > max(log$day) - 7) / by_mulch(all_rows),
  first = min(log$day),
  steps = steps,
  running = running,
  mulchHalves = as.vector(sapply(mulches, function(mulch) half_day(log[log$mulch == mulch, ]))),
  halves = as.list(halves)
))
