import { describe, expect, it } from "vitest";
import { withinBeds } from "../../src/methods/withinBeds";
import { near } from "../near";
import reference from "../reference/unevenness.json";
import { figure } from "./found";

const planted = (value: readonly number[], treatment: readonly number[], bed: readonly number[]) =>
  value.map((v, i) => ({ value: v, treatment: treatment[i] ?? Number.NaN, bed: bed[i] ?? Number.NaN }));

describe("withinBeds agrees with R's lm(value ~ bed + treatment)", () => {
  it.each(reference.cases.beds)("$name", ({ value, treatment, bed, df, unevenness }) => {
    const found = withinBeds(planted(value, treatment, bed));
    expect(found.df).toBe(df);
    near("unevenness", figure(found.unevenness), unevenness, { relative: 1e-12 });
  });
});

describe("withinBeds at the ends", () => {
  it("equal plants have 0", () => {
    expect(withinBeds(planted([4, 4, 4, 4], [1, 1, 2, 2], [1, 2, 1, 2]))).toEqual({ unevenness: 0, df: 1 });
  });

  it("says why there is none", () => {
    expect(withinBeds([])).toEqual({ unevenness: { absent: "no-usable-plants" }, df: 0 });
    const none = { unevenness: { absent: "no-degrees-of-freedom" }, df: 0 };
    expect(withinBeds(planted([1, 2, 3], [1, 1, 1], [1, 2, 3]))).toEqual(none);
    expect(withinBeds(planted([1, 2], [1, 2], [1, 1]))).toEqual(none);
    expect(withinBeds(planted([0, 0, 0], [1, 1, 1], [1, 1, 1])).unevenness).toEqual({ absent: "average-zero" });
  });
});
