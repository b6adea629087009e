# Least-squares fits by R's lm(), for tests/numerics/leastSquares.test.ts. Run: Rscript tests/reference/leastSquares.R
source("tests/reference/write.R")

case <- function(name, design, y) {
  fit <- lm.fit(design, y)
  kept <- !is.na(fit$coefficients)
  covariance <- matrix(NA_real_, ncol(design), ncol(design))
  order <- fit$qr$pivot[seq_len(fit$rank)]
  covariance[order, order] <- chol2inv(fit$qr$qr[seq_len(fit$rank), seq_len(fit$rank), drop = FALSE])
  rows <- function(m) lapply(seq_len(nrow(m)), function(i) I(as.numeric(m[i, ])))
  list(name = name, rows = rows(design), y = as.numeric(y), coefficients = I(as.numeric(fit$coefficients)),
       residualSumOfSquares = sum(fit$residuals^2), rank = fit$rank, dropped = I(unname(which(!kept)) - 1),
       unscaledCovariance = rows(covariance))
}
design <- function(formula, data) {
  m <- model.matrix(formula, data)
  matrix(as.numeric(m), nrow(m))
}
gappy <- warpbreaks[-c(1:9, 30, 54), ]
sheep <- data.frame(bed = gl(3, 4, 11), mulch = factor(c(1, 2, 3, 4, 2, 3, 4, 1, 3, 4, 1)))

write_reference("leastSquares", list(
  case("straight line, cars", design(~ speed, cars), cars$dist),
  case("one average", matrix(1, nrow(women), 1), women$height),
  case("blocks and three nutrients, npk", design(~ block + N * P * K, npk), npk$yield),
  case("an empty cell: one column depends on others", design(~ wool * tension, gappy), gappy$breaks),
  case("both full sets of dummies", design(~ 0 + bed + I(mulch == 1) + I(mulch == 2) + I(mulch == 3) + I(mulch == 4), sheep),
       c(3.1, 4.7, 6.2, 8.8, 5.3, 7.9, 9.4, 4.2, 8.6, 10.1, 5.9)),
  case("a column of zeros first", cbind(0, 1, women$height), women$weight)))
