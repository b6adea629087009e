import { expect, it } from "vitest";
import { lookAtDates } from "../../src/ranges/lookAtDates";

it("reads each day and notes what was settled or is not certain", () => {
  const cells = [45_112, "24/6/23", "5/7/23", "5 July", null, "3rd", { error: "#REF!" }, "skipped", "24/6/23"];
  const { serials, noted } = lookAtDates(cells, new Set([7]));
  // 24 June and 5 July 2023: tests/reference/dates.json
  const nothing = Number.NaN;
  expect([...serials]).toEqual([45_112, 45_101, 45_112, 45_112, nothing, nothing, nothing, nothing, 45_101]);
  expect(noted.map(({ row, remark }) => [row, remark.kind])).toEqual([
    [2, "date-settled"],
    [3, "date-settled"],
    [4, "not-recorded"],
    [5, "unreadable"],
    [6, "error"],
  ]);
});

it("notes an empty cell, an error and a text that is no date as such", () => {
  const { noted } = lookAtDates([null, { error: "#REF!" }, "3rd"], new Set());
  expect(noted.map(({ remark }) => remark)).toEqual([
    { kind: "not-recorded", why: "empty" },
    { kind: "error" },
    { kind: "unreadable", why: "not-a-date" },
  ]);
});

it("rows that are skipped do not settle the order of the others", () => {
  expect([...lookAtDates(["5/7/23", "24/6/23"], new Set([1])).serials]).toEqual([Number.NaN, Number.NaN]);
});

it("keeps both days of a doubtful date", () => {
  expect(lookAtDates(["5/7"], new Set()).noted[0]?.remark).toEqual({
    kind: "unreadable",
    why: "order",
    days: [
      { year: null, month: 7, day: 5 },
      { year: null, month: 5, day: 7 },
    ],
  });
});

it.each([
  ["3rd", { kind: "unreadable", why: "not-a-date" }],
  ["", { kind: "not-recorded", why: "empty" }],
  [null, { kind: "not-recorded", why: "empty" }],
  [{ error: "#REF!" }, { kind: "error" }],
])("of %j it says %j and no more", (cell, remark) => {
  expect(lookAtDates([cell], new Set()).noted).toStrictEqual([{ row: 0, remark }]);
});
