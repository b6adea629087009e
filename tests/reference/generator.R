# SplitMix64 and xoshiro128** written a second time, in R. Use: source("tests/reference/generator.R")
# Words are vectors of 16-bit limbs, lowest first, because R has no unsigned integers.
carry <- function(limbs) {
  for (i in seq_along(limbs)) {
    over <- limbs[i] %/% 65536
    limbs[i] <- limbs[i] %% 65536
    if (i < length(limbs)) limbs[i + 1] <- limbs[i + 1] + over
  }
  limbs
}
add <- function(a, b) carry(a + b)
times <- function(a, b) {
  product <- numeric(length(a))
  for (i in seq_along(a)) for (j in seq_len(length(a) - i + 1)) {
    piece <- a[i] * b[j]
    product[i + j - 1] <- product[i + j - 1] + piece %% 65536
    if (i + j <= length(a)) product[i + j] <- product[i + j] + piece %/% 65536
  }
  carry(product)
}
xor_limbs <- function(a, b) as.numeric(bitwXor(as.integer(a), as.integer(b)))
bits <- function(a) as.vector(sapply(a, function(limb) (limb %/% 2^(0:15)) %% 2))
from_bits <- function(b) as.vector(colSums(matrix(b, 16) * 2^(0:15)))
right <- function(a, by) { b <- bits(a); from_bits(c(b[-seq_len(by)], rep(0, by))) }
left <- function(a, by) { b <- bits(a); from_bits(c(rep(0, by), head(b, -by))) }
rotate <- function(a, by) { b <- bits(a); from_bits(c(tail(b, by), head(b, -by))) }
hex <- function(text) strtoi(rev(substring(text, seq(1, nchar(text), 4), seq(4, nchar(text), 4))), 16L)
small <- function(x, limbs) carry(c(x, rep(0, limbs - 1)))

splitmix <- function(seed, nth) {
  z <- add(seed, times(small(nth, 4), hex("9e3779b97f4a7c15")))
  z <- times(xor_limbs(z, right(z, 30)), hex("bf58476d1ce4e5b9"))
  z <- times(xor_limbs(z, right(z, 27)), hex("94d049bb133111eb"))
  xor_limbs(z, right(z, 31))
}
negative <- function(limbs) add(65535 - limbs, small(1, length(limbs)))
# A source of chance: each call gives the next whole number from 0 to 2^32 - 1.
generator <- function(seed) {
  word <- if (seed < 0) negative(small(-seed, 4)) else small(seed, 4)
  first <- splitmix(word, 1)
  second <- splitmix(word, 2)
  s <- list(first[1:2], first[3:4], second[1:2], second[3:4])
  function() {
    result <- times(rotate(times(s[[2]], small(5, 2)), 7), small(9, 2))
    shifted <- left(s[[2]], 9)
    s[[3]] <<- xor_limbs(s[[3]], s[[1]])
    s[[4]] <<- xor_limbs(s[[4]], s[[2]])
    s[[2]] <<- xor_limbs(s[[2]], s[[3]])
    s[[1]] <<- xor_limbs(s[[1]], s[[4]])
    s[[3]] <<- xor_limbs(s[[3]], shifted)
    s[[4]] <<- rotate(s[[4]], 11)
    sum(result * c(1, 65536))
  }
}
