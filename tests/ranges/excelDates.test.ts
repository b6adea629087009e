import { expect, it } from "vitest";
import { excelDates } from "../../src/ranges/excelDates";

it("excelDates sees a date in 36 000 to 55 000 while most numbers are under 5 000", () => {
  const isDate = excelDates([307, 282, 45_112]);
  expect([35_999, 36_000, 45_112, 55_000, 55_001].map(isDate)).toEqual([false, true, true, true, false]);
});

it("excelDates sees none where half the numbers are not small", () => {
  expect(excelDates([307, 45_112])(45_112)).toBe(false);
  expect(excelDates([4_999, 5_000, 45_112])(45_112)).toBe(false);
  expect(excelDates([])(45_112)).toBe(false);
  expect(excelDates(Float64Array.of(307, 45_112, Number.NaN))(45_112)).toBe(false);
  expect(excelDates(Float64Array.of(307, 282, 45_112, Number.NaN, Number.NaN))(45_112)).toBe(true);
});
