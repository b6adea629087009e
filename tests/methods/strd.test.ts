import { describe, expect, it } from "vitest";
import { additiveModel } from "../../src/methods/additiveModel";
import { allTogether } from "../../src/methods/allTogether";
import { oneWayModel } from "../../src/methods/oneWayModel";
import { near } from "../near";
import strd from "../reference/strd.json";

type Groups = readonly (readonly number[])[];

/** What NIST certifies of a set. */
function certified(groups: Groups) {
  const model = oneWayModel(groups);
  const { treatments, residual } = model.squares;
  return {
    f: allTogether(model).f,
    rSquared: treatments.sumOfSquares / (treatments.sumOfSquares + residual.sumOfSquares),
    sd: Math.sqrt(model.meanSquare),
  };
}

/** The rule of Simon & Lesage's sets, in tenths, so that each response is the double nearest to its decimals. */
function generated(offset: number, replicates: number): Groups {
  const effect = (at: number) => (at === 0 ? 2 : at % 2 === 1 ? 1 : 3);
  return Array.from({ length: 9 }, (_, treatment) =>
    Array.from({ length: replicates }, (_unused, at) => (offset * 10 + effect(treatment) + effect(at)) / 10),
  );
}

/** Relative error allowed: the decimals of the harder sets do not fit a double, so that its F is not the certified one. */
function allowed(offset: number): number {
  if (offset === 1) return 5e-14;
  return offset === 1e6 ? 1e-10 : 1e-4;
}

describe("the one-way model gives NIST's certified F, R² and residual standard deviation", () => {
  it("SiRstv to 12 digits", () => {
    const [{ groups, ...known } = expect.fail("no set")] = strd.observed.filter(({ name }) => name === "SiRstv");
    for (const what of ["f", "rSquared", "sd"] as const)
      near(what, certified(groups)[what], known[what], { relative: 1e-12 });
  });

  it("AtmWtAg to 10 digits, the limit of its data", () => {
    const [{ groups, ...known } = expect.fail("no set")] = strd.observed.filter(({ name }) => name === "AtmWtAg");
    for (const what of ["f", "rSquared", "sd"] as const)
      near(what, certified(groups)[what], known[what], { relative: 1e-10 });
  });

  it.each(strd.generated)("$name", ({ offset, replicates, ...known }) => {
    const found = certified(generated(offset, replicates));
    for (const what of ["f", "rSquared", "sd"] as const)
      near(what, found[what], known[what], { relative: allowed(offset) });
  });
});

/** F in whole numbers, which are exact: the values times 2^shift, sums over N instead of means. */
function exactF(groups: Groups, shift: number): number {
  const whole = groups.map((group) => group.map((value) => BigInt(value * 2 ** shift)));
  const sum = (values: readonly bigint[]) => values.reduce((total, value) => total + value, 0n);
  const n = BigInt(whole[0]?.length ?? 0);
  const [k, squares] = [BigInt(whole.length), sum(whole.flat().map((value) => value * value))];
  const groupSquares = sum(whole.map((group) => sum(group) ** 2n));
  const between = k * groupSquares - sum(whole.flat()) ** 2n;
  const within = n * squares - groupSquares;
  // 18 digits of the quotient are enough for a double
  return Number((between * k * (n - 1n) * n * 10n ** 18n) / (k * n * (k - 1n) * within)) / 1e18;
}

describe("where the certified F is out of reach, the exact F of the very doubles is met", () => {
  it.each(strd.generated.filter(({ offset }) => offset === 1e12))("$name", ({ offset, replicates }) => {
    const groups = generated(offset, replicates);
    near("F", certified(groups).f, exactF(groups, 13), { relative: 1e-11 });
  });

  it("the exact arithmetic itself agrees with a certified F", () => {
    near("SmLs01", exactF(generated(1, 21), 60), 21, { relative: 1e-13 });
  });
});

it("the additive model gives the same F on SmLs04 when its replicates are taken for beds", () => {
  const groups = generated(1e6, 21);
  const plants = groups.flatMap((group, treatment) => group.map((value, bed) => ({ value, treatment, bed })));
  const model = additiveModel(plants) ?? expect.fail("no model");
  near("treatments", model.squares.treatments.sumOfSquares, 1.68, { relative: 1e-9 });
  near("beds", model.squares.beds?.sumOfSquares ?? Number.NaN, 1.8, { relative: 1e-9 });
});
