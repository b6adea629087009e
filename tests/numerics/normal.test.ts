import jStat from "jstat";
import { describe, expect, it } from "vitest";
import { density, lowerTail, nearQuantile, quantile, upperTail } from "../../src/numerics/normal";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

agreesOnGrid("normal_lower", lowerTail, { truth: 1e-14, r: 1e-13 });
agreesOnGrid("normal_quantile", quantile, { truth: 1e-14, r: 1e-12 });

describe("the normal law", () => {
  it("the two ways of adding up meet: no step at ±0.7 and at 8", () => {
    for (const edge of [0.7, -0.7, 8]) {
      const [before, after] = [upperTail(edge - 1e-9), upperTail(edge + 1e-9)];
      near(`slope at ${edge}`, (before - after) / 2e-9, density(edge), { relative: 1e-6 });
    }
  });

  it("has the density of DLMF 7.2: 1/√(2π) at 0, φ(1) = 0.24197072451914337", () => {
    near("φ(0)", density(0), 1 / Math.sqrt(2 * Math.PI), { relative: 1e-15 });
    near("φ(1)", density(1), 0.24197072451914337, { relative: 1e-15 });
    expect(density(-3)).toBe(density(3));
  });

  it("jstat's guess and our quantile are neighbours", () => {
    for (const p of [0.001, 0.2, 0.6, 0.99]) near(`${p}`, quantile(p), jStat.normal.inv(p, 0, 1), { relative: 1e-6 });
  });

  it.each([
    [0.025, -1.95996398454],
    [0.8, 0.841621233573],
    [0.975, 1.95996398454],
    [0.99, 2.32634787404],
  ])("the guess alone is near: %d (R: qnorm)", (p, z) => {
    near(`${p}`, nearQuantile(p), z, { relative: 1e-6 });
  });

  it("hard cases: 0, −0, infinities, NaN, far out", () => {
    expect(lowerTail(0)).toBe(0.5);
    expect(lowerTail(-0)).toBe(0.5);
    expect(lowerTail(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(lowerTail(Number.POSITIVE_INFINITY)).toBe(1);
    expect(upperTail(60)).toBe(0);
    expect(lowerTail(Number.NaN)).toBeNaN();
  });

  it("edges of p", () => {
    expect(quantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(quantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(quantile(0.5)).toBe(0);
    expect(quantile(-0.1)).toBeNaN();
    expect(quantile(Number.NaN)).toBeNaN();
  });
});
