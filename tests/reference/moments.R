# Descriptive figures by R, for tests/numerics/moments, quantile and median. Run: Rscript tests/reference/moments.R
source("tests/reference/write.R")

case <- function(name, x) {
  x <- as.numeric(x)
  list(name = name, x = I(x), mean = mean(x), variance = var(x), median = median(x),
       mad = mad(x, constant = 1), p = c(0, 0.1, 0.25, 1/3, 0.5, 0.9, 1),
       quantiles = as.numeric(quantile(x, c(0, 0.1, 0.25, 1/3, 0.5, 0.9, 1), type = 7)))
}

write_reference("moments", list(
  case("speed of light, Michelson 1879 (NIST StRD Michelso)", (morley$Speed + 299000) / 1000),
  case("dried weights, trt1", PlantGrowth$weight[PlantGrowth$group == "trt1"]),
  case("insects counted, spray C", InsectSprays$count[InsectSprays$spray == "C"]),
  case("extra sleep, signs mixed", sleep$extra),
  case("girths of cherry trees", trees$Girth),
  case("two values", c(3, 10)),
  case("ties", c(2, 2, 2, 5, 5, 9)),
  case("far from zero", 1e6 + c(0.25, 0.5, 0.125, 0.75))))
