# The one writer of reference numbers: JSON with 17 significant digits, which give every double back exactly.
# Use: source("tests/reference/write.R"); write_reference("welch", value)   (run from the project's folder)
# Named lists and named vectors become objects, other lists and vectors arrays, a single unnamed value a scalar;
# I(x) keeps a vector of length one an array. NULL becomes null, NA becomes null, and since JSON has no word for
# NaN and the infinities they become the strings "NaN", "Inf" and "-Inf".

json_text <- function(text) {
  escaped <- gsub("\\", "\\\\", text, fixed = TRUE)
  escaped <- gsub("\"", "\\\"", escaped, fixed = TRUE)
  paste0("\"", gsub("\n", "\\n", escaped, fixed = TRUE), "\"")
}

json_number <- function(x) {
  if (is.nan(x)) return("\"NaN\"")
  if (is.infinite(x)) return(if (x > 0) "\"Inf\"" else "\"-Inf\"")
  short <- sprintf("%.15g", x)
  if (identical(as.numeric(short), as.numeric(x))) short else sprintf("%.17g", x)
}

json_scalar <- function(x) {
  if (is.factor(x)) x <- as.character(x)
  if (is.character(x)) return(if (is.na(x)) "null" else json_text(x))
  if (is.na(x) && !is.nan(x)) return("null")
  if (is.logical(x)) return(if (x) "true" else "false")
  json_number(x)
}

json_value <- function(x, indent = "", depth = 0) {
  if (is.null(x)) return("null")
  if (length(x) == 0) return(if (is.null(names(x))) "[]" else "{}")
  keep_array <- inherits(x, "AsIs")
  named <- !is.null(names(x))
  if (!is.list(x) && length(x) == 1 && !named && !keep_array) return(json_scalar(x))
  inner <- paste0(indent, "  ")
  parts <- vapply(seq_along(x), function(i) json_value(x[[i]], inner, depth + 1), "")
  if (named) parts <- paste0(vapply(names(x), json_text, ""), ": ", parts)
  brackets <- if (named) c("{", "}") else c("[", "]")
  one_line <- paste0(brackets[1], paste(parts, collapse = ", "), brackets[2])
  if (depth > 0 && nchar(one_line) <= 160 && !grepl("\n", one_line, fixed = TRUE)) return(one_line)
  if (!is.list(x)) return(one_line)
  paste0(brackets[1], "\n", inner, paste(parts, collapse = paste0(",\n", inner)), "\n", indent, brackets[2])
}

# Writes tests/reference/NAME.json: { "generator": R's version, "cases": value }.
write_reference <- function(name, cases) {
  record <- list(generator = R.version.string, cases = cases)
  writeLines(json_value(record), file.path("tests", "reference", paste0(name, ".json")), useBytes = TRUE)
}
