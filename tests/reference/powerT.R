# Power of t tests by R's power.t.test(), for tests/numerics/noncentralT.test.ts. Run: Rscript tests/reference/powerT.R
source("tests/reference/write.R")

plans <- expand.grid(n = c(2, 3, 5, 8, 12, 20, 50, 200, 500), delta = c(0.1, 0.5, 1, 2, 5), alpha = c(0.1, 0.05, 0.01))
write_reference("powerT", lapply(seq_len(nrow(plans)), function(i) {
  plan <- plans[i, ]
  both <- power.t.test(plan$n, plan$delta, sig.level = plan$alpha, strict = TRUE)$power
  one <- power.t.test(plan$n, plan$delta, sig.level = plan$alpha, alternative = "one.sided")$power
  list(n = plan$n, delta = plan$delta, alpha = plan$alpha, twoSided = both, oneSided = one)
}))
