import { describe, expect, it } from "vitest";
import { oddValues } from "../../src/methods/oddValues";
import reference from "../reference/unevenness.json";

describe("oddValues agrees with R's median() and mad() over open data", () => {
  it.each(reference.cases.odd)("$name", ({ values, odd }) => {
    expect(oddValues(values)).toEqual(odd);
  });

  it("some of these are odd and some data sets have none", () => {
    const counts = reference.cases.odd.map(({ odd }) => odd.length);
    expect(Math.max(...counts)).toBeGreaterThan(0);
    expect(Math.min(...counts)).toBe(0);
  });
});

describe("oddValues at the borders", () => {
  it("five times the middle value is odd for any number of plants, a little less is not", () => {
    expect(oddValues([10, 2, 2])).toEqual([0]);
    expect(oddValues([9.99, 2, 2])).toEqual([]);
    expect(oddValues([7])).toEqual([]);
  });

  it("a robust score counts from ten plants on, either way", () => {
    const nine = [10, 11, 12, 10, 11, 12, 10, 11, 12];
    expect(oddValues([...nine.slice(1), 30])).toEqual([]);
    expect(oddValues([...nine, 30])).toEqual([9]);
    expect(oddValues([...nine, 2])).toEqual([9]);
  });

  it("far off on one scale only is not odd; a zero leaves the plain scale alone", () => {
    const nine = [10, 11, 12, 10, 11, 12, 10, 11, 12];
    expect(oddValues([...nine, 20])).toEqual([]);
    expect(oddValues([...nine, 0])).toEqual([9]);
  });

  // R: 0.6745 * abs(x - median(x)) / mad(x, constant = 1) is 6.07 for the 20; of the logarithms it would be 4.63
  it("beside a zero a high value is judged by the plain scale alone", () => {
    expect(oddValues([10, 11, 12, 10, 11, 12, 10, 11, 12, 20, 0])).toEqual([9, 10]);
  });

  // the middle is 0, the middle deviation 0.6745, so that the last value is its own score
  it("a score of 5 is not beyond 5", () => {
    const nine = [-0.6745, -0.6745, -0.6745, 0, 0, 0, 0.6745, 0.6745, 0.6745];
    expect(oddValues([...nine, 5])).toEqual([]);
    expect(oddValues([...nine, 5.01])).toEqual([9]);
  });

  it("with most values equal, or a middle value of 0, there is nothing to measure by", () => {
    expect(oddValues([5, 5, 5, 5, 5, 5, 5, 5, 5, 6])).toEqual([]);
    expect(oddValues([0, 0, 0, 3])).toEqual([]);
    expect(oddValues([])).toEqual([]);
  });
});
