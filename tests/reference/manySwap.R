# The shares that manySwap.test.ts (tests/methods) trusts: every relabeling of a small trial listed, and its model fitted
# anew by lm.fit(). A share is that of the relabelings whose largest |t| is at least the one seen.
# Run: Rscript tests/reference/manySwap.R
source("tests/reference/write.R")
source("tests/reference/manyShared.R")

# All orders of a vector of labels that differ.
orders <- function(labels) {
  if (length(labels) < 2) return(matrix(labels, 1))
  do.call(rbind, lapply(unique(labels), function(first) {
    rest <- labels[-match(first, labels)]
    cbind(first, orders(rest), deparse.level = 0)
  }))
}

# |t| of every comparison in `duos` (rows: usual, tried), treatments numbered from 0.
sizes <- function(value, treatment, bed, duos) {
  k <- max(treatment) + 1
  x <- outer(treatment, 0:(k - 1), `==`) + 0
  if (length(unique(bed)) > 1) x <- cbind(x, outer(bed, sort(unique(bed))[-1], `==`) + 0)
  fit <- lm.fit(x, value)
  unscaled <- chol2inv(qr.R(fit$qr))
  mse <- sum(fit$residuals^2) / fit$df.residual
  apply(duos + 1, 1, function(d) {
    v <- unscaled[d[1], d[1]] + unscaled[d[2], d[2]] - 2 * unscaled[d[1], d[2]]
    abs(fit$coefficients[d[2]] - fit$coefficients[d[1]]) / sqrt(mse * v)
  })
}

swaps <- function(name, value, treatment, bed, pairs) {
  k <- max(treatment) + 1
  duos <- if (pairs) t(combn(0:(k - 1), 2)) else cbind(0, 1:(k - 1))
  seen <- as.numeric(sizes(value, treatment, bed, duos))
  groups <- split(seq_along(value), bed)
  listed <- lapply(groups, function(at) orders(treatment[at]))
  choices <- expand.grid(lapply(listed, function(rows) seq_len(nrow(rows))))
  largest <- apply(choices, 1, function(choice) {
    relabeled <- treatment
    for (g in seq_along(groups)) relabeled[groups[[g]]] <- listed[[g]][choice[g], ]
    max(sizes(value, relabeled, bed, duos))
  })
  list(name = name, value = value, treatment = treatment, bed = bed, pairs = pairs, duos = lapply(seq_len(nrow(duos)), function(i) duos[i, ]),
       relabelings = length(largest), t = seen, share = sapply(seen, function(one) mean(largest >= one - 1e-9 * one)))
}

separate <- c(4.2, 5.1, 3.9, 5.6, 7.1, 5.4, 6.6, 4.4, 6.9, 5.8)
inBeds <- c(21, 30, 24, 18, 25, 26, 30, 37, 29, 24, 33)
treatments <- c(0, 1, 2, 0, 1, 2, 0, 1, 2, 0, 1); beds <- c(0, 0, 0, 1, 1, 1, 2, 2, 2, 3, 3)
# Three treatments in so many beds, the usual first: Dunnett's p of each (balanced, so every correlation is 1/2), or
# Tukey's of all pairs, beside the swap's.
close <- function(name, value, pairs = FALSE) {
  beds <- length(value) / 3; df <- 2 * (beds - 1)
  found <- swaps(name, value, rep(0:2, beds), rep(seq_len(beds) - 1, each = 3), pairs)
  c(found, if (pairs) list(tukey = ptukey(found$t * sqrt(2), 3, df, lower.tail = FALSE)) else
    list(dunnett = sapply(found$t, dunnett_tail, rep(sqrt(0.5), 2), df)))
}
write_reference("manySwap", list(
  swaps("separate plants against the usual", separate, rep(0:2, c(4, 3, 3)), rep(0, 10), FALSE),
  swaps("all pairs of separate plants", separate, rep(0:2, c(4, 3, 3)), rep(0, 10), TRUE),
  swaps("in beds with a plant missing, against the usual", inBeds, treatments, beds, FALSE),
  swaps("in beds with a plant missing, all pairs", inBeds, treatments, beds, TRUE),
  close("above the bar by Dunnett, below it by swaps", c(21, 28, 26, 24, 30, 24, 30, 41, 21, 26, 36, 31)),
  close("below the bar by Dunnett, above it by swaps", c(19, 24, 23, 28, 34, 21, 26, 37, 31, 26, 36, 34)),
  close("close, and both above", c(18, 25, 26, 28, 33, 22, 26, 30, 25, 24, 32, 27)),
  close("below the bar by far, above it by swaps", c(19, 24, 23, 28, 34, 21, 26, 37, 31, 26, 37, 34)),
  close("in three beds, above the bar by Dunnett, below it by swaps", c(24, 30, 26, 28, 34, 30, 15, 26, 27)),
  close("all pairs, the last one above the bar by Tukey, below it by swaps",
        c(34, 36, 31, 28, 37, 26, 17, 38, 24, 21, 27, 21), TRUE)))
