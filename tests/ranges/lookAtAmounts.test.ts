import fc from "fast-check";
import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { isProblem } from "../../src/nouns/problem";
import type { Remark } from "../../src/nouns/reading";
import { lookAtAmounts } from "../../src/ranges/lookAtAmounts";
import { readPickAmounts } from "../../src/ranges/pickAmounts";
import { readSample } from "../../src/ranges/readSample";
import { column } from "./column";

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

it.each<[Cell, Remark | null]>([
  [Number.NaN, { kind: "error" }],
  [Number.POSITIVE_INFINITY, { kind: "error" }],
  [{ error: "#N/A" }, { kind: "error" }],
  [null, { kind: "not-recorded", why: "empty" }],
  ["forgot", { kind: "not-recorded", why: "word" }],
  ["slugs", { kind: "unreadable", why: "text" }],
  ["1,250", { kind: "unreadable", why: "doubtful-number", numbers: [1250, 1.25] }],
  ["2 cm", { kind: "unreadable", why: "unit-unclear" }],
  [false, { kind: "unreadable", why: "true-or-false" }],
  ["506*", { kind: "mark-removed", amount: { value: 506, unit: "g" } }],
  ["0.235kg", { kind: "unit-converted", amount: { value: 235, unit: "g" } }],
  ["none", { kind: "none-as-zero" }],
  ["died", { kind: "lost" }],
  [45_112, { kind: "excel-date", day: { year: 2023, month: 7, day: 5 } }],
  [0, { kind: "zero" }],
  [-3, null],
  ["290", null],
])("notes of %j in a column of grams: %j", (cell, remark) => {
  const { noted } = lookAtAmounts([300, cell, 310, 290], "grams", new Set());
  expect(noted).toEqual(remark === null ? [] : [{ row: 1, remark }]);
});

it("a number that is not finite is none of the amounts", () => {
  const { values } = lookAtAmounts([300, Number.POSITIVE_INFINITY, Number.NaN], null, new Set());
  expect([...values]).toEqual([300, Number.NaN, Number.NaN]);
});

it("tells whether the heading named the unit", () => {
  expect(lookAtAmounts(["300 g"], "Straw (g)", new Set())).toMatchObject({ unit: "g", unitInHeading: true });
  expect(lookAtAmounts(["300 g"], "Straw", new Set())).toMatchObject({ unit: "g", unitInHeading: false });
  expect(lookAtAmounts([300], null, new Set())).toMatchObject({ unit: null, unitInHeading: false });
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

it("a date in a text is noted like one in a number cell; a number with a mark is none", () => {
  const { values, noted } = lookAtAmounts([300, 310, 290, "45112", "45112*"], null, new Set());
  expect([...values].slice(3)).toEqual([Number.NaN, 45_112]);
  expect(noted.map(({ remark }) => remark.kind).sort()).toEqual(["excel-date", "mark-removed"]);
});

it("a bare number far from most amounts, which have units, is noted as unclear", () => {
  const { values, noted } = lookAtAmounts(["180 g", "200 g", 5000, "190 g"], null, new Set());
  expect([...values]).toEqual([180, 200, Number.NaN, 190]);
  expect(noted).toContainEqual({ row: 2, remark: { kind: "unreadable", why: "unit-unclear" } });
});

it("whatever stands in a column: LOOKOVER, the comparisons and the tallies read the same numbers", () => {
  const plain = [0, 3, 180, 200, 5000, 45_112, "45112", "45112*", "506*", "1,250", "0"];
  const typed = ["180 g", "0.2 kg", "45 kg", "12 cm", "none", "lost", "slugs", "0 g", null, true, { error: "#N/A" }];
  const cells = fc.array(fc.constantFrom<Cell>(...plain, ...typed), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(cells, (given) => {
      const looked = [...lookAtAmounts(given, null, new Set()).values];
      const rules = { counts: () => true, headingUnit: null, unit: null, zerosVerified: true };
      const tallied = readPickAmounts(column(given).cells, rules);
      const compared = readSample(column(given), "keep", { length: given.length, heading: false });
      if (isProblem(tallied)) throw new Error(tallied.problem);
      expect([...tallied.values]).toEqual(looked);
      if (isProblem(compared)) return;
      expect(compared.entries.map((entry) => (entry.kind === "value" ? entry.value : Number.NaN))).toEqual(looked);
    }),
    { numRuns: 2000, seed: 13 },
  );
});
