import { expect, it } from "vitest";
import { guessBeta, guessChiSquare, guessNormal, guessStudentT } from "../../src/numerics/jstat";
import { near } from "../near";

// R 4.2.2: qt(0.975, 8), qnorm(0.975), qchisq(0.95, 3), qbeta(0.5, 2, 3)
it("guesses agree with R to the digits jstat has", () => {
  near("t", guessStudentT(0.025, 8), 2.3060041352041658, { relative: 1e-6 });
  near("normal", guessNormal(0.025), 1.9599639845400536, { relative: 1e-6 });
  near("chi-square", guessChiSquare(0.95, 3), 7.8147279032511792, { relative: 1e-6 });
  near("beta", guessBeta(0.5, 2, 3), 0.38572756813238951, { relative: 1e-6 });
});

it("guesses of t and z are sizes", () => {
  expect(guessStudentT(0.4, 3)).toBeGreaterThan(0);
  expect(guessNormal(0.4)).toBeGreaterThan(0);
});
