# Twenty numbers from each of several seeds, for tests/numerics/random.test.ts.
# Run: Rscript tests/reference/random.R
source("tests/reference/write.R")
source("tests/reference/generator.R")

draws <- function(seed, count) {
  draw <- generator(seed)
  vapply(seq_len(count), function(i) draw(), 0)
}

write_reference("random", lapply(c(0, 1, 42, 1431, 65536, 4294967296, 9007199254740991, -1, -42), function(seed) {
  list(seed = seed, draws = draws(seed, 20))
}))
