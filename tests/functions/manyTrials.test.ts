import { describe, expect, it } from "vitest";
import { near } from "../near";
import reference from "../reference/commonChange.json";
import { cell, labels, matrix, number, refused } from "./call";

const { barley, two } = reference.cases;

it("the answer is the common change, and the labels are METHODS' in their order", () => {
  const table = matrix("MANYTRIALS", barley.usual, barley.new, "table");
  expect(labels(table)).toEqual(["Change", "Change low", "Change high", "Verdict", "Trials", "Ahead in"]);
  expect(number("MANYTRIALS", barley.usual, barley.new)).toBe(number("MANYTRIALS", barley.usual, barley.new, "Change"));
});

it("ten varieties of barley, by R", () => {
  const shown = (label: string) => number("MANYTRIALS", barley.usual, barley.new, label);
  near("change", shown("Change"), barley.change, { relative: 1e-12 });
  near("low", shown("Change low"), barley.low, { relative: 1e-11 });
  near("high", shown("Change high"), barley.high, { relative: 1e-11 });
  expect(shown("Trials")).toBe(10);
  expect(shown("Ahead in")).toBe(barley.ahead);
  expect(cell("MANYTRIALS", barley.usual, barley.new, "Verdict")).toBe("Down, how far unclear");
});

// METHODS 8.17: two rows lean at most, one row has a change only.
describe("few trials", () => {
  it("two lean at most", () => {
    near("change", number("MANYTRIALS", two.usual, two.new), two.change, { relative: 1e-12 });
    expect(cell("MANYTRIALS", [3, 4], [6, 8.01], "Verdict")).toBe("Leaning up, too few trials");
  });

  it("one has no range and no verdict", () => {
    expect(cell("MANYTRIALS", 3, 4, "Verdict")).toBe("one trial");
    expect(cell("MANYTRIALS", 3, 4, "Change low")).toBe("one trial: no range");
    near("change", number("MANYTRIALS", 3, 4), 1 / 3, { relative: 1e-14 });
  });
});

describe("rows without two averages above 0", () => {
  it("are left out, and said to be", () => {
    const call = [
      ["Bare", 3, 0, 4, "lost"],
      ["Straw", 4, 5, 5, 6],
    ] as const;
    expect(number("MANYTRIALS", ...call, "Trials")).toBe(2);
    expect(cell("MANYTRIALS", ...call, "cautions")).toContain("2 rows were left out, first at row 3 of usual_averages");
  });

  it("alone are refused", () => {
    expect(refused("MANYTRIALS", [0, -1], [4, 5])).toEqual({
      code: "#N/A",
      message: "No row of usual_averages has two averages above 0. Give one row per season, place or crop.",
    });
  });
});

it("the names' heading says what a row is", () => {
  const call = [
    ["Bare", 3, 4, 5],
    ["Straw", 4, 5, 7],
  ] as const;
  expect(cell("MANYTRIALS", ...call, "words", ["Season", 2021, 2022, 2023])).toContain("3 of 3 seasons");
  expect(cell("MANYTRIALS", ...call, "words", ["Crop", "leeks", "chard", "peas"])).toContain("3 of 3 crops");
  expect(cell("MANYTRIALS", ...call, "words", ["Garden", "a", "b", "c"])).toContain("3 of 3 trials");
  expect(refused("MANYTRIALS", ...call, null, ["Crop", "leeks"]).message).toMatch(/match in size/);
});
