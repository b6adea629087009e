import { describe, expect, it } from "vitest";
import { commonChange } from "../../src/methods/commonChange";
import { near } from "../near";
import reference from "../reference/commonChange.json";

describe.each(Object.entries(reference.cases))("%s, by R's t.test on logs", (_name, known) => {
  it("change and range", () => {
    const ratios = known.new.map((value, at) => value / (known.usual[at] ?? Number.NaN));
    const { change, range } = commonChange(ratios, known.confidence);
    near("change", change, known.change, { relative: 1e-12 });
    near("low", "low" in range ? range.low : Number.NaN, known.low, { relative: 1e-11 });
    near("high", "high" in range ? range.high : Number.NaN, known.high, { relative: 1e-11 });
  });
});

// METHODS 10, item 54, as printed there.
it("ratios 1.30, 1.10 and 1.25 are 21.3618 % more (−2.3127 to 50.7739)", () => {
  const { change, range } = commonChange([1.3, 1.1, 1.25], 0.95);
  near("change", 100 * change, 21.3618, { absolute: 5e-5 });
  near("low", "low" in range ? 100 * range.low : Number.NaN, -2.3127, { absolute: 5e-5 });
  near("high", "high" in range ? 100 * range.high : Number.NaN, 50.7739, { absolute: 5e-5 });
});

it("one trial, and trials all alike, have no range", () => {
  expect(commonChange([1.5], 0.95).range).toEqual({ absent: "one-trial" });
  expect(commonChange([1.5, 1.5, 1.5], 0.95).range).toEqual({ absent: "all-equal" });
  expect(commonChange([0.3 / 0.1 / 3, 1, (0.1 * 3) / 0.3], 0.95).range).toEqual({ absent: "all-equal" });
  near("change", commonChange([1.5, 1.5], 0.95).change, 0.5, { absolute: 1e-15 });
});
