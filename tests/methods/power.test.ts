import { describe, expect, it } from "vitest";
import { plannedTest, power, powerOf } from "../../src/methods/power";
import { twoSidedCritical } from "../../src/numerics/studentT";
import { near } from "../near";
import reference from "../reference/power.json";
import { figure } from "./found";
import { numbers, planOf, unevennessFor } from "./planRows";
import { printed } from "./printed";

describe("powerOf agrees with R's power.t.test(strict = TRUE)", () => {
  it.each([
    ["two.sample", reference.cases.classicTwoSample, (n: number) => 2 * n - 2, (n: number) => Math.sqrt(n / 2)],
    ["paired", reference.cases.classicPaired, (n: number) => n - 1, Math.sqrt],
  ] as const)("%s", (type, rows, dfOf, perDelta) => {
    for (const row of rows) {
      const [n = 0, delta = 0, alpha = 0, known = 0] = row;
      const df = dfOf(n);
      const found = powerOf({ alpha, df, critical: twoSidedCritical(alpha, df) }, delta * perDelta(n));
      near(`${type}, n ${n}, delta ${delta}, alpha ${alpha}`, found, known, { relative: 1e-9 });
    }
  });
});

describe("power agrees with R's non-central pt() when spread grows with the yield", () => {
  it("all layouts", () => {
    for (const row of reference.cases.power) {
      const [p = 0, c, n = 0, k, b, known = 0] = numbers(row);
      // R's pt() adds up to 1e-12 of noise, which shows in small chances
      near(`${row}`, figure(power(p, n, planOf(c, k, b))), known, { relative: 1e-9, absolute: 2e-12 });
    }
  });
});

describe("power agrees with printed figures", () => {
  const separate = (unevenness: number) => planOf(unevenness, 2, 0);

  it("grow-with-yield (R)", () => {
    printed("+50 %, 30 %, 6 each", figure(power(0.5, 6, separate(0.3))), "0.534038");
    printed("+25 %, 20 %, 10 each", figure(power(0.25, 10, separate(0.2))), "0.646626");
    printed("+100 %, 30 %, 2 each", figure(power(1, 2, separate(0.3))), "0.235062");
  });

  it("unevenness 5 %, gap 10 %: five or six repetitions have a reasonable chance (Ohio State; R 79.05 %, 87.64 %)", () => {
    printed("five", 100 * figure(power(1, 5, separate(unevennessFor(2)))), "79.05");
    printed("six", 100 * figure(power(1, 6, separate(unevennessFor(2)))), "87.64");
  });
});

describe("power at the ends", () => {
  it("no change is shown as often as false alarms are allowed", () => {
    expect(power(0, 8, planOf(0.3, 2, 0))).toBe(0.05);
    expect(power(0, 8, planOf(0.3, 6, 0))).toBe(0.01);
    near("limit", figure(power(1e-9, 8, planOf(0.3, 6, 0))), 0.01);
  });

  it("degrees of freedom by layout: k(n − 1), kn − b − k + 1, (k − 1)(n − 1)", () => {
    expect(plannedTest(6, planOf(0.3, 4, 0))?.df).toBe(20);
    expect(plannedTest(6, planOf(0.3, 4, 3))?.df).toBe(18);
    expect(plannedTest(6, planOf(0.3, 4, 6))?.df).toBe(15);
    expect(plannedTest(6, planOf(0.3, 4, -1))?.df).toBe(15);
    expect(power(0.5, 2, planOf(0.3, 2, 3))).toEqual({ absent: "no-degrees-of-freedom" });
  });
});
