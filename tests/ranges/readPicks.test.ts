import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { readPicks } from "../../src/ranges/readPicks";
import { found, range } from "../questions/range";

const none = { ownerKind: "plant", lossNotes: null, besides: [], unit: null, start: null } as const;

function log(plants: readonly Cell[], amounts: readonly Cell[], dates: readonly Cell[] | null = null) {
  return readPicks({
    ...none,
    owners: range("plants", plants),
    amounts: range("amounts", amounts),
    dates: dates && range("dates", dates),
  });
}

it("a text above the amounts is a heading, unless a date stands beside it or the plant comes again", () => {
  const rows = (...given: Parameters<typeof log>) => found(log(...given)).owners.ids.length;
  expect(rows(["plant", "A1"], ["grams", 5])).toBe(1);
  expect(rows(["A1", "A1"], ["slugs", 5])).toBe(2);
  expect(rows(["A1", "A2"], ["slugs", 5], ["2023-07-05", "2023-07-06"])).toBe(2);
  expect(rows([null, "A2"], ["grams", 5])).toBe(1);
});

it("tells a cell's place and text as the sheet has them, heading or not", () => {
  const { cellAt } = found(log(["plant", "A1", "A2"], ["grams", 5, "6*"]));
  expect(cellAt("amounts", 1)).toEqual({
    place: { argument: "amounts", row: 3, column: null, cell: "B4" },
    text: "6*",
  });
  expect(cellAt("dates", 0).place.argument).toBe("plants");
});

it("empty rows at the end and between are not there; rows of totals lose their owner", () => {
  const read = found(log(["A1", null, "TOTAL", null, "A1", null], [1, null, 1, 7, 2, null]));
  expect([...read.owners.ids]).toEqual([0, -1, -1, -1, 0]);
  expect(read.totalRows).toEqual([2]);
  expect(read.unlabelled).toEqual([3]);
  expect([...read.amounts.values]).toEqual([1, Number.NaN, Number.NaN, Number.NaN, 2]);
});

it("a treatment's name that a quarter of the rows has is no total", () => {
  const read = found(log(["Weekly feed", "Bare", "Weekly feed", "Bare", "Week total"], [1, 2, 3, 4, 10]));
  expect([...read.owners.ids]).toEqual([0, 1, 0, 1, -1]);
  expect(read.totalRows).toEqual([4]);
});

it("dates take order and year from their column; the first unclear ones are listed by row", () => {
  const { days } = found(log(["A1", "A1", "A1"], [1, 2, 3], ["5/7/2023", "24/6/2023", "soon"]));
  expect([...(days?.serials ?? [])]).toEqual([45112, 45101, Number.NaN]);
  expect(days?.unclear).toEqual([2]);
});

it("unit-less columns, errors and logical values", () => {
  const { amounts } = found(log(["A1", "A1", "A1"], [1, true, { error: "#N/A" }]));
  expect(amounts.unit).toBeNull();
  expect([...amounts.missing.values()]).toEqual(["true-or-false", "error"]);
});

it("kilograms typed among bare numbers keep no rounding noise: 1.005 kg are 1005 g", () => {
  expect(1.005 * 1000).not.toBe(1005);
  expect(found(log(["A1", "A1"], ["1.005 kg", 900])).amounts.values[0]).toBe(1005);
});

it("where several units fit the bare numbers as well, those with a unit are left out", () => {
  const { amounts } = found(log(["A1", "A1", "A1"], ["1 kg", "2 lb", 2]));
  expect([...amounts.missing.values()]).toEqual(["unit-unclear", "unit-unclear"]);
});

it("sizes that differ are refused", () => {
  expect(log(["A1"], [1, 2])).toMatchObject({ problem: "shapes-differ" });
});
