import { expect, it } from "vitest";
import type { Cell } from "../../../src/nouns/cell";
import { repeatsBeside } from "../../../src/pane/beside/repeatsBeside";

const repeats = (heading: string, cells: readonly Cell[]) =>
  repeatsBeside({
    corner: { sheet: "Log", row: 1, column: 2 },
    headed: 1,
    bottom: 1 + cells.length,
    beside: [{ column: 1, above: heading === "" ? [] : [heading], cells }],
  });

it("a plant's label that comes twice beside the amounts shows picks (METHODS 9.2, C02)", () => {
  expect(repeats("Plant", ["B1-1", "B1-2", " b1-1"])).toBe(true);
  expect(repeats("Plant label", ["B1-1", "B1-2", "B1-3", null, null])).toBe(false);
});

it("dates of several picking days that come more than once show picks; one planting day for all does not", () => {
  expect(repeats("Date", [45_474, 45_474, 45_477])).toBe(true);
  expect(repeats("Date", [45_474, 45_474, 45_474])).toBe(false);
  expect(repeats("Date", [45_474, 45_477, 45_480])).toBe(false);
});

it("repeats in columns of other things say nothing", () => {
  expect(repeats("Mulch", ["Straw", "Straw", "Straw"])).toBe(false);
  expect(repeats("", ["Straw", "Straw"])).toBe(false);
});
