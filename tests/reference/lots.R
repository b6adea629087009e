# Plans drawn by lot by the documented recipe, written a second time in R. Use: source("tests/reference/lots.R")
# It needs generator.R.

# A whole number from 0 to n - 1, all equally likely: draws at or above the largest multiple of n are thrown away.
below <- function(draw, n) {
  fair <- 2^32 - 2^32 %% n
  repeat {
    drawn <- draw()
    if (drawn < fair) return(drawn %% n)
  }
}

# Fisher and Yates: from the last place to the second, swapped with one among itself and those before it.
shuffled <- function(items, draw) {
  if (length(items) > 1) for (place in length(items):2) {
    other <- below(draw, place) + 1
    items[c(place, other)] <- items[c(other, place)]
  }
  items
}

# Beds in their order, each begun as all of the first treatment, all of the second and so on.
plan <- function(treatments, each, number, beds = NULL) {
  draw <- generator(number)
  count <- if (is.null(beds)) 1 else beds
  orders <- lapply(seq_len(count), function(bed) shuffled(rep(treatments, each = each / count), draw))
  spots <- unlist(lapply(orders, seq_along))
  bed <- rep(seq_len(count), lengths(orders))
  list(
    treatments = treatments, each = each, number = number, beds = beds,
    order = unlist(orders),
    labels = if (is.null(beds)) paste0("P", spots) else paste0("B", bed, "-", spots)
  )
}
