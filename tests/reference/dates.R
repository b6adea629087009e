# Excel's numbers (1900 system) for every 97th day of 1930-01-01 to 2099-12-31 and for the days round each leap day:
# R counts days from 1970-01-01, which Excel numbers 25569.
days <- as.Date(c(
  as.character(seq(as.Date("1930-01-01"), as.Date("2099-12-31"), by = 97)),
  "1930-01-01", "2099-12-31", "1900-03-01", "2000-02-28", "2000-02-29", "2000-03-01", "2023-02-28", "2023-03-01",
  "2024-02-29", "2024-12-31", "2025-01-01", "2023-06-24", "2023-07-05", "2023-05-07"
))
parts <- as.POSIXlt(days)
rows <- sprintf(
  '  { "year": %d, "month": %d, "day": %d, "serial": %d }',
  parts$year + 1900L, parts$mon + 1L, parts$mday, as.integer(days) + 25569L
)
writeLines(c("[", paste(rows, collapse = ",\n"), "]"), "tests/reference/dates.json")
