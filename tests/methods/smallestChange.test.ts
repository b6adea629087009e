import { describe, expect, it } from "vitest";
import { power } from "../../src/methods/power";
import { smallestChange } from "../../src/methods/smallestChange";
import { near } from "../near";
import reference from "../reference/power.json";
import { figure } from "./found";
import { numbers, planOf } from "./planRows";

describe("smallestChange agrees with R's uniroot() over the non-central pt()", () => {
  it("all layouts, more and less", () => {
    let none = 0;
    for (const row of reference.cases.smallest) {
      const [n = 0, c, chance = 0, up = 0, k, b, known = Number.NaN] = numbers(row);
      const found = smallestChange(n, { chance, direction: up > 0 ? "more" : "less" }, planOf(c, k, b));
      if (Number.isNaN(known)) {
        none += 1;
        expect(found, `${row}`).toEqual({ absent: "too-few-plants" });
      } else near(`${row}`, figure(found), known, { relative: 1e-9 });
    }
    expect(none).toBeGreaterThan(0);
  });
});

describe("smallestChange agrees with printed figures (R)", () => {
  const more = (n: number, unevenness: number) =>
    100 * figure(smallestChange(n, { chance: 0.8, direction: "more" }, planOf(unevenness, 2, 0)));

  it("8 each at 30 %, 6 each at 35 %, printed from uniroot() left at its own tolerance of 1.22e-4", () => {
    near("8 each", more(8, 0.3), 60.41478, { absolute: 0.0122 });
    near("6 each", more(6, 0.35), 98.94762, { absolute: 0.0122 });
  });

  const list = (unevenness: number, sizes: readonly number[]) => sizes.map((n) => Math.round(more(n, unevenness)));

  it("the printed lists of whole percents", () => {
    expect(list(0.3, [3, 4, 6, 8, 12, 20])).toEqual([216, 124, 78, 60, 45, 32]);
    expect(list(0.2, [2, 4, 6, 8])).toEqual([436, 65, 45, 36]);
  });
});

it("smallestChange is the change that has the chance", () => {
  for (const direction of ["more", "less"] as const) {
    const plan = planOf(0.25, 4, 3);
    const change = figure(smallestChange(12, { chance: 0.7, direction }, plan));
    expect(Math.sign(change)).toBe(direction === "more" ? 1 : -1);
    near("chance", figure(power(change, 12, plan)), 0.7, { relative: 1e-11 });
  }
});

it("smallestChange says why there is none", () => {
  const wanted = { chance: 0.8, direction: "less" } as const;
  expect(smallestChange(2, wanted, planOf(0.5, 2, 0))).toEqual({ absent: "too-few-plants" });
  expect(smallestChange(2, wanted, planOf(0.5, 2, 4))).toEqual({ absent: "no-degrees-of-freedom" });
});
