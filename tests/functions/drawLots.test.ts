import { expect, it } from "vitest";
import { cell, matrix, refused } from "./call";

const mulches = ["Bare soil", "Straw"];

// Made by tests/reference/drawLots.R, an implementation of its own; written out so that it can be read.
const plan = [
  ["Spot", "Bed", "Treatment", "Label"],
  [1, "", "Straw", "P1"],
  [2, "", "Straw", "P2"],
  [3, "", "Bare soil", "P3"],
  [4, "", "Bare soil", "P4"],
  [5, "", "Bare soil", "P5"],
  [6, "", "Bare soil", "P6"],
  [7, "", "Straw", "P7"],
  [8, "", "Straw", "P8"],
  [9, "", "Straw", "P9"],
  [10, "", "Bare soil", "P10"],
  [11, "", "Straw", "P11"],
  [12, "", "Bare soil", "P12"],
];
const inBeds = [
  ["Spot", "Bed", "Treatment", "Label"],
  [1, 1, "C", "B1-1"],
  [2, 1, "B", "B1-2"],
  [3, 1, "A", "B1-3"],
  [4, 1, "B", "B1-4"],
  [5, 1, "C", "B1-5"],
  [6, 1, "A", "B1-6"],
  [1, 2, "B", "B2-1"],
  [2, 2, "A", "B2-2"],
  [3, 2, "B", "B2-3"],
  [4, 2, "C", "B2-4"],
  [5, 2, "C", "B2-5"],
  [6, 2, "A", "B2-6"],
];

it("number 1431 gives this plan for ever", () => {
  expect(matrix("DRAWLOTS", mulches, 6, 1431)).toEqual(plan);
  expect(matrix("DRAWLOTS", mulches, 6, 1431, "table")).toEqual(plan);
});

it("number 0 gives this plan in two beds for ever", () => {
  expect(matrix("DRAWLOTS", 3, 4, 0, null, 2)).toEqual(inBeds);
});

it.each(["Spot", "bed", "Treatment", "LABEL"])("show %s is that column without its heading", (show) => {
  const at = inBeds[0]?.findIndex((label) => String(label).toLowerCase() === show.toLowerCase()) ?? -1;
  const column = inBeds.slice(1).map((row) => [row[at]]);
  expect(matrix("DRAWLOTS", 3, 4, 0, show, 2)).toEqual(column);
});

it("a spot's number is no row's name, and is not listed as one", () => {
  const { message } = refused("DRAWLOTS", 3, 4, 0, "3", 2);
  expect(message).toBe(
    "“3” cannot be shown here. These can: answer; table; words; say; cautions; Spot; Bed; Treatment; Label.",
  );
});

it("without a number the cell says what to do, and everything else is refused with that sentence", () => {
  const sentence = "Pick any number, such as the time on your watch. Keep it: the number makes the list again.";
  expect(cell("DRAWLOTS", mulches, 6)).toBe(sentence);
  expect(cell("DRAWLOTS", mulches, 6, null, "words")).toMatch(/^Pick any number/);
  for (const show of ["table", "Treatment", "Label"]) {
    expect(refused("DRAWLOTS", mulches, 6, null, show)).toEqual({ code: "#VALUE!", message: sentence });
  }
});

it("METHODS' own sentence for a plan", () => {
  expect(cell("DRAWLOTS", mulches, 6, 1431, "words", 3)).toMatch(
    /^2 treatments, 6 plants each, 3 beds, drawn with number 1431\. Plant exactly as listed: choosing or swapping afterwards undoes the draw\./,
  );
});

it("each bed must hold as many of each", () => {
  expect(refused("DRAWLOTS", mulches, 7, 1431, null, 3).message).toContain("Each bed must hold as many of each");
});
