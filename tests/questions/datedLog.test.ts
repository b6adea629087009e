import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { datedLog } from "../../src/questions/datedLog";
import { found, range } from "./range";

type Cells = readonly Cell[];

const read = (plants: Cells, dates: Cells | null, amounts: Cells) =>
  datedLog({
    owners: range("plants", plants),
    ownerKind: "plant",
    amounts: range("amounts", amounts),
    dates: dates && range("dates", dates),
    lossNotes: null,
    besides: [],
    unit: null,
    start: null,
  });

// 2023-07-01 is Excel's day 45108
it("runs from the first to the last day of any plant, in whichever row they stand", () => {
  const dates = ["2023-07-08", "2023-07-01", "2023-07-20", "2023-07-09"];
  expect(found(read(["A", "B", "A", "B"], dates, [4, 5, 6, 7]))).toMatchObject({ first: 45_108, last: 45_127 });
});

it.each([
  ["without a plant", null],
  ["of a total", "Total"],
])("a row %s neither begins nor ends the season", (_, label) => {
  const dates = ["2021-01-01", "2023-07-01", "2023-07-09", "2025-01-01"];
  expect(found(read([label, "A", "B", label], dates, [9, 4, 5, 9]))).toMatchObject({ first: 45_108, last: 45_116 });
});

it("a row whose date cannot be read neither begins nor ends it either", () => {
  const dates = ["soon", "2023-07-01", "2023-07-09", null];
  expect(found(read(["A", "A", "B", "B"], dates, [9, 4, 5, 9]))).toMatchObject({ first: 45_108, last: 45_116 });
});

it("says where no date can be read: in the cells given, or under their name where there are none", () => {
  expect(read(["A", "B"], ["soon", "later"], [4, 5])).toEqual({ problem: "no-dates", where: "B2:B3" });
  expect(read(["A", "B"], null, [4, 5])).toEqual({ problem: "no-dates", where: "dates" });
});

it("refuses a log of no plant, and dates more than 400 days apart", () => {
  expect(read([null, "Total"], ["2023-07-01", "2023-07-02"], [4, 5])).toEqual({ problem: "no-picks", where: "B2:B3" });
  expect(found(read(["A", "B"], ["2023-07-01", "2024-08-04"], [4, 5])).last).toBe(45_508);
  expect(read(["A", "B"], ["2023-07-01", "2024-08-05"], [4, 5])).toEqual({ problem: "two-seasons", days: 401 });
});
