import fc from "fast-check";
import { expect, it } from "vitest";
import { twoSidedPower, upperTail } from "../../src/numerics/noncentralT";
import * as normal from "../../src/numerics/normal";
import * as central from "../../src/numerics/studentT";
import { near } from "../near";
import powerT from "../reference/powerT.json";
import { agreesOnGrid } from "./grid";

// R's pt() with ncp has an absolute accuracy of about 1e-12, and is a normal approximation from ncp = 37.62 on (?pt)
agreesOnGrid("noncentral_t_upper", upperTail, {
  truth: 1e-12,
  r: 1e-10,
  rAbsolute: 1e-11,
  rIsExact: (_t, _df, ncp = 0) => Math.abs(ncp) <= 37.62,
});

it("power agrees with R's power.t.test(), two-sided and one-sided", () => {
  for (const { n, delta, alpha, twoSided, oneSided } of powerT.cases) {
    const df = 2 * n - 2;
    const ncp = delta * Math.sqrt(n / 2);
    const name = `n ${n}, delta ${delta}, alpha ${alpha}`;
    near(name, twoSidedPower(central.twoSidedCritical(alpha, df), df, ncp), twoSided, { absolute: 1e-10 });
    near(name, upperTail(central.quantile(1 - alpha, df), df, ncp), oneSided, { absolute: 1e-10 });
  }
});

it("two-sided power is both one-sided tails together", () => {
  const df = fc.double({ min: 1, max: 500, noNaN: true });
  const ncp = fc.double({ min: -12, max: 12, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 12, noNaN: true }), df, ncp, (critical, freedom, shift) => {
      const both = upperTail(critical, freedom, shift) + upperTail(critical, freedom, -shift);
      near("power", twoSidedPower(critical, freedom, shift), both, { relative: 1e-11 });
    }),
  );
});

it("without non-centrality it is Student's t", () => {
  for (const t of [-3, -0.2, 0, 1, 25])
    near(`${t}`, upperTail(t, 4.5, 0), central.upperTail(t, 4.5), { relative: 1e-12 });
  near("power", twoSidedPower(2, 9, 0), central.twoSidedTail(2, 9), { relative: 1e-13 });
});

it("infinitely many df are the shifted normal law", () => {
  near("tail", upperTail(2, Number.POSITIVE_INFINITY, 3), normal.lowerTail(1));
  near("power", twoSidedPower(2, Number.POSITIVE_INFINITY, 3), normal.lowerTail(1) + normal.lowerTail(-5));
});

it("hard cases: very large shifts, and far tails that underflow", () => {
  near("certain", twoSidedPower(2, 10, 500), 1, { relative: 1e-13 });
  expect(upperTail(2, 10, -60)).toBeLessThan(1e-300);
  expect(upperTail(1e9, 2, 0)).toBeGreaterThan(0);
});

it.each([
  [Number.NaN, 5, 1],
  [1, 0, 1],
  [1, 5, Number.NaN],
  [Number.POSITIVE_INFINITY, 5, Number.POSITIVE_INFINITY],
])("no answer for t = %d, df = %d, ncp = %d", (t, df, ncp) => {
  expect(upperTail(t, df, ncp)).toBeNaN();
  expect(twoSidedPower(t, df, ncp)).toBeNaN();
});

it("a critical value of 0 is always passed", () => {
  near("power", twoSidedPower(0, 5, 1), 1, { relative: 1e-14 });
});

it("no power for a critical value below 0", () => {
  expect(twoSidedPower(-1, 5, 1)).toBeNaN();
});
