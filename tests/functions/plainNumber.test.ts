import { describe, expect, it } from "vitest";
import { near } from "../near";
import { at, cell, matrix, number, refused } from "./call";

it("METHODS' own examples", () => {
  // METHODS 10, item 52; sizes of pound and ounce: NIST Special Publication 811, appendix B.8
  near("1 lb 4 oz", number("PLAINNUMBER", "1 lb 4 oz"), 566.990463, { absolute: 5e-7 });
  expect(cell("PLAINNUMBER", "0,726 kg")).toBe(726);
  expect(cell("PLAINNUMBER", "approx 179")).toBe(179);
  expect(cell("PLAINNUMBER", "506*")).toBe(506);
  expect(cell("PLAINNUMBER", "2½")).toBe(2.5);
  expect(cell("PLAINNUMBER", "2½ lb", "lb")).toBe(2.5);
});

it("the same shape out as in", () => {
  const block = [
    ["0.235kg", "lost", ""],
    ["none", null, 12],
  ];
  expect(matrix("PLAINNUMBER", block)).toEqual([
    [235, "lost", ""],
    [0, "", 12],
  ]);
});

describe("what cannot be read is an error value in its own cell, the others stand", () => {
  const shown = matrix("PLAINNUMBER", ["forgot", "1,250", "12 cm", 45_112, 300, 310, 320, 330, 340, 350]);

  it.each([
    [0, /^Can't read .forgot.\.$/],
    [1, /^Can't tell whether .1,250. is 1250 or 1\.25\.$/],
    [2, /^.12 cm. cannot be turned into g\.$/],
    [3, /^.45112. looks like 5 July 2023, a date Excel made\. Type the amount again\.$/],
  ])("row %i", (row, sentence) => {
    expect(shown[row]?.[0]).toMatchObject({ code: "#VALUE!", message: expect.stringMatching(sentence) });
  });

  it("numbers beside them", () => {
    expect(shown.slice(4).flat()).toEqual([300, 310, 320, 330, 340, 350]);
  });
});

it("a single cell that cannot be read refuses the call with the same sentence", () => {
  expect(refused("PLAINNUMBER", at("Log!F9", [["forgot"]]))).toMatchObject({ code: "#VALUE!" });
  expect(refused("PLAINNUMBER", "2 kg", "count").message).toMatch(/turned into a count/);
  expect(refused("PLAINNUMBER", 3, "bushel").message).toMatch(/g.*kg.*lb/);
});

it.each([
  ["2 kg", "lb", 2000 / 453.59237],
  ["10 in", "cm", 25.4],
  ["1 ft", "in", 12],
  ["1500 ml", "l", 1.5],
  [7, "kg", 7],
  ["3 m", "ft", 300 / 30.48],
])("%s in %s", (typed, unit, value) => {
  near(`${typed} in ${unit}`, number("PLAINNUMBER", typed, unit), value, { relative: 1e-15 });
});
