import { describe, expect, it } from "vitest";
import { near } from "../near";
import doors from "../reference/doors.json";
import handbook from "../reference/handbook.json";
import { cell, labels, matrix, number, refused } from "./call";
import { mulch } from "./demo";

const single = "one figure each: no range";

it("shows the change alone, and eight labels in METHODS' order", () => {
  expect(cell("UPDOWN", 24, 72)).toBe(2);
  const table = matrix("UPDOWN", 24, 72, "table");
  expect(labels(table)).toEqual([
    "Change",
    "Change low",
    "Change high",
    "Times as much",
    "Average, usual",
    "Average, new",
    "Plants, usual",
    "Plants, new",
  ]);
  expect(table.map(([, value]) => value)).toEqual([2, single, single, 3, 24, 72, 1, 1]);
  for (const [label, value] of table) expect(cell("UPDOWN", 24, 72, label)).toBe(value);
});

it.each(handbook.cases.percentFacts.rows)(
  "percent facts (METHODS 6.5): %d → %d",
  (usual = 0, tried = 0, change = 0) => {
    near("change", number("UPDOWN", usual, tried), change, { relative: 1e-12 });
    near("times", number("UPDOWN", usual, tried, "Times as much"), 1 + change, { relative: 1e-12, absolute: 1e-15 });
  },
);

it("a cell of a range works like a typed number", () => {
  expect(cell("UPDOWN", [[24]], [[72]])).toBe(2);
  expect(cell("UPDOWN", ["~24"], [["72 *"]])).toBe(2);
});

it("'short' and the words of one pair", () => {
  expect(cell("UPDOWN", 24, 72, "short")).toBe("+200 % (3 times)");
  expect(cell("UPDOWN", 24, 72, "Short")).toBe("+200 % (3 times)");
  expect(cell("UPDOWN", 24, 72, "words")).toMatch(/^72 is 3 times 24: up 200 %, not 300 %\./);
});

const harvests = Object.entries(doors.cases.two).filter(([, { usual }]) => usual.every((value) => value >= 0));

describe.each(harvests)("%s, by R", (_name, { usual, new: tried, welch, welch80 }) => {
  it.each([
    ["95 %", null, welch.percent],
    ["80 %", 0.8, welch80.percent],
  ])("the range of separate plants at %s", (_level, confidence, { low, high }) => {
    const shown = (label: string) => cell("UPDOWN", usual, tried, label, confidence);
    if (low === null) expect(shown("Change low")).toBe("no lower limit above −100 %");
    else near("low", Number(shown("Change low")), low, { relative: 1e-8, absolute: 1e-10 });
    if (high === null) expect(shown("Change high")).toBe("no upper limit");
    else near("high", Number(shown("Change high")), high, { relative: 1e-8 });
  });
});

it("Marlpit Corner: straw +44.1 % (−0.67 … 94.78), lost plant left out", () => {
  const call = [mulch("Bare soil"), mulch("Straw")];
  const { percent } = handbook.cases.demoTwo.expect;
  for (const [index, label] of ["Change", "Change low", "Change high"].entries()) {
    near(label, 100 * number("UPDOWN", ...call, label), percent[index] ?? 0, { absolute: 1e-8 });
  }
  expect(cell("UPDOWN", ...call, "Plants, new")).toBe(7);
  expect(cell("UPDOWN", ...call, "words")).toMatch(/Straw/);
});

it("one plant against several has no range, and says why", () => {
  expect(cell("UPDOWN", [10], [12, 13, 14], "Change low")).toBe("one plant: no unevenness");
  near("change", number("UPDOWN", [10], [12, 13, 14]), 0.3);
});

it("nothing varies: no range, and says why", () => {
  expect(cell("UPDOWN", [10, 10], [12, 12], "Change high")).toBe("all values equal: check the data");
});

describe("zero and below", () => {
  it("new 0 is −100 %", () => {
    expect(cell("UPDOWN", 8, 0)).toBe(-1);
    expect(cell("UPDOWN", [8, 9, 7], ["none", "-", 0])).toBe(-1);
  });

  it("usual 0: #N/A for what needs a percent, with the new amount", () => {
    for (const show of [null, "Change", "Change low", "Times as much", "short"]) {
      const { code, message } = refused("UPDOWN", 0, 7, show);
      expect(code).toBe("#N/A");
      expect(message).toMatch(/^Usual is 0, so a percent is undefined; new is 7\./);
    }
    expect(refused("UPDOWN", [0, "none", 0], [7, 8], "Change").code).toBe("#N/A");
    expect(cell("UPDOWN", 0, 7, "Average, new")).toBe(7);
    expect(matrix("UPDOWN", 0, 7, "table")).toHaveLength(8);
  });

  it.each([
    [-3, 7],
    [3, -7],
    [
      [4, -1, 5],
      [7, 8, 9],
    ],
  ])("%s to %s: a harvest below 0 is #VALUE! with its place", (usual, tried) => {
    const { code, message } = refused("UPDOWN", usual, tried);
    expect(code).toBe("#VALUE!");
    expect(message).toMatch(/^Row \d of (usual|new) holds −\d/);
  });
});
