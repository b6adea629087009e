import { expect, it } from "vitest";
import { dateText, dayNumber, today } from "../../../src/pane/record/dayNumber";

// "January 1, 2008 is serial number 39448": Excel's help on DATEVALUE.
it("a day is the spreadsheet's day number", () => {
  expect(dayNumber("2008-01-01")).toBe(39_448);
  expect(dayNumber("2008-02-29")).toBe(39_448 + 59);
  expect(dayNumber("1970-01-01")).toBe(25_569);
});

it.each(["", "1 January", "2023-02-31x", "2023-02-31", "2023-02-29", "2023-13-01"])("'%s' is no day", (written) => {
  expect(dayNumber(written)).toBeNull();
});

it("today is the day on the grower's own calendar, early and late", () => {
  expect(today(new Date(2008, 0, 1, 0, 1))).toBe(39_448);
  expect(today(new Date(2008, 0, 1, 23, 59))).toBe(39_448);
});

it("a day number is the day as a date field has it", () => {
  expect(dateText(39_448)).toBe("2008-01-01");
  for (const written of ["1970-01-01", "2008-02-29", "2026-08-30", "1999-12-31"]) {
    expect(dateText(dayNumber(written) ?? Number.NaN)).toBe(written);
  }
});
