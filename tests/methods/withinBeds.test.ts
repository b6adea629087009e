import { describe, expect, it } from "vitest";
import { withinBeds } from "../../src/methods/withinBeds";
import { near } from "../near";
import reference from "../reference/unevenness.json";
import { figure } from "./found";

const planted = (value: readonly number[], treatment: readonly number[], bed: readonly number[]) =>
  value.map((v, i) => ({ value: v, treatment: treatment[i] ?? Number.NaN, bed: bed[i] ?? Number.NaN }));

const average = (plants: readonly { readonly value: number }[]) =>
  plants.reduce((sum, { value }) => sum + value, 0) / plants.length;

describe("withinBeds agrees with R's lm(value ~ bed + treatment)", () => {
  it.each(reference.cases.beds)("$name", ({ value, treatment, bed, df, unevenness }) => {
    const found = withinBeds(planted(value, treatment, bed));
    expect(found.df).toBe(df);
    near("unevenness", figure(found.unevenness), unevenness, { relative: 1e-12 });
  });
});

describe("withinBeds at the ends", () => {
  // two trials side by side: what is left of both, over the degrees of freedom of both
  it("treatments that no bed links are fitted by themselves", () => {
    const [one, other] = [
      planted([3, 5, 4, 8], [1, 2, 1, 2], [1, 1, 2, 2]),
      planted([9, 2, 7, 7], [5, 6, 5, 6], [3, 3, 4, 4]),
    ];
    const left = [one, other].map((plants) => figure(withinBeds(plants).unevenness) * average(plants));
    const together = withinBeds([...one, ...other]);
    expect(together.df).toBe(2);
    const squares = left.reduce((sum, deviation) => sum + deviation ** 2, 0);
    near("both", figure(together.unevenness) * average([...one, ...other]), Math.sqrt(squares / 2), {
      relative: 1e-13,
    });
  });

  // the numbers 1 … n of one treatment in one bed have the variance n(n + 1)/12
  it("one treatment in one large bed is its own spread", () => {
    const n = 50_000;
    const plants = planted(
      Array.from({ length: n }, (_, at) => at + 1),
      new Array(n).fill(0),
      new Array(n).fill(0),
    );
    near("spread", figure(withinBeds(plants).unevenness), Math.sqrt((n * (n + 1)) / 12) / ((n + 1) / 2), {
      relative: 1e-13,
    });
  });

  it("equal plants have 0", () => {
    expect(withinBeds(planted([4, 4, 4, 4], [1, 1, 2, 2], [1, 2, 1, 2]))).toEqual({ unevenness: 0, df: 1 });
  });

  // what beds and treatments leave is the same when every plant weighs 2³⁰ less, which takes off no digit
  it("values far from zero keep their last digits", () => {
    const heavy = [3, 5, 4, 8, 9, 2, 7, 6].map((value) => 2 ** 30 + value / 3);
    const light = heavy.map((value) => value - 2 ** 30);
    const [far, near0] = [heavy, light].map((values) => {
      const plants = planted(values, [1, 2, 3, 1, 2, 3, 1, 2], [1, 1, 1, 2, 2, 2, 3, 3]);
      return figure(withinBeds(plants).unevenness) * average(plants);
    });
    near("left", far ?? 0, near0 ?? 0, { relative: 1e-13 });
  });

  it("says why there is none", () => {
    expect(withinBeds([])).toEqual({ unevenness: { absent: "no-usable-plants" }, df: 0 });
    const none = { unevenness: { absent: "no-degrees-of-freedom" }, df: 0 };
    expect(withinBeds(planted([1, 2, 3], [1, 1, 1], [1, 2, 3]))).toEqual(none);
    expect(withinBeds(planted([1, 2], [1, 2], [1, 1]))).toEqual(none);
    expect(withinBeds(planted([0, 0, 0], [1, 1, 1], [1, 1, 1])).unevenness).toEqual({ absent: "average-zero" });
  });
});
