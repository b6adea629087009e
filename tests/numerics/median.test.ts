import { expect, it } from "vitest";
import { median, medianAbsoluteDeviation } from "../../src/numerics/median";
import { near } from "../near";
import reference from "../reference/moments.json";

it.each(reference.cases)("agrees with R's median() and mad(): $name", (known) => {
  near("median", median(known.x), known.median, { relative: 1e-15 });
  // distances from the median carry the rounding of the values themselves
  near("mad", medianAbsoluteDeviation(known.x), known.mad, {
    absolute: 1e-16 * Math.abs(known.median),
    relative: 1e-15,
  });
});

it("hard cases: none, one, two huge values, NaN", () => {
  expect(median([])).toBeNaN();
  expect(medianAbsoluteDeviation([])).toBeNaN();
  expect(medianAbsoluteDeviation([4])).toBe(0);
  expect(median([1.6e308, 1.6e308])).toBe(1.6e308);
  expect(median([Number.NaN, 1, 2])).toBeNaN();
});
