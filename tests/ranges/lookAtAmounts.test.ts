import { expect, it } from "vitest";
import { lookAtAmounts } from "../../src/ranges/lookAtAmounts";

it("reads amounts into the heading's unit and notes what is no plain number above 0", () => {
  const cells = [
    300,
    "0.235kg",
    "506*",
    "lost",
    "none",
    0,
    null,
    "forgot",
    "slugs",
    "1,250",
    "2 cm",
    true,
    45_112,
    280,
    "0",
  ];
  const { values, noted } = lookAtAmounts([...cells, 290, 291, 292], "grams", new Set([13]));
  const nothing = Number.NaN;
  expect([...values]).toEqual([
    300,
    235,
    506,
    nothing,
    0,
    0,
    nothing,
    nothing,
    nothing,
    nothing,
    nothing,
    nothing,
    nothing,
    nothing,
    0,
    290,
    291,
    292,
  ]);
  const kinds = noted.map(({ row, remark }) => [row, remark.kind] as const).sort(([one], [other]) => one - other);
  expect(kinds).toEqual([
    [1, "unit-converted"],
    [2, "mark-removed"],
    [3, "lost"],
    [4, "none-as-zero"],
    [5, "zero"],
    [6, "not-recorded"],
    [7, "not-recorded"],
    [8, "unreadable"],
    [9, "unreadable"],
    [10, "unreadable"],
    [11, "unreadable"],
    [12, "excel-date"],
    [14, "zero"],
  ]);
});

it("without a unit in the heading, bare numbers have their say (settleUnits)", () => {
  expect([...lookAtAmounts([2900, 3200, "3.1 kg", "3100 g"], null, new Set()).values]).toEqual([
    2900, 3200, 3100, 3100,
  ]);
  expect([...lookAtAmounts([40, 45, "10 oz", "300 g"], null, new Set()).values].slice(2)).toEqual([
    Number.NaN,
    Number.NaN,
  ]);
  expect([...lookAtAmounts(["3.1 kg", "3100 g"], null, new Set()).values]).toEqual([3.1, 3.1]);
});
