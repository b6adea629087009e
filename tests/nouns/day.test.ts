import { describe, expect, it } from "vitest";
import { dayOf, isDay, serialOf } from "../../src/nouns/day";
import days from "../reference/dates.json";

describe("Excel's numbers for days, as R counts them (tests/reference/dates.R)", () => {
  it("serialOf", () => {
    expect(days.map(({ year, month, day }) => serialOf({ year, month, day }))).toEqual(
      days.map(({ serial }) => serial),
    );
  });

  it("dayOf, with and without a time of day", () => {
    const wanted = days.map(({ year, month, day }) => ({ year, month, day }));
    expect(days.map(({ serial }) => dayOf(serial))).toEqual(wanted);
    expect(days.map(({ serial }) => dayOf(serial + 0.99))).toEqual(wanted);
  });

  it("every day of 1900 to 2099 comes back", () => {
    for (let serial = 61; serial < 73_051; serial += 1) {
      const day = dayOf(serial);
      if (serialOf(day) !== serial || !isDay(day)) expect.fail(`${serial}`);
    }
    expect(dayOf(61)).toEqual({ year: 1900, month: 3, day: 1 });
  });
});

it.each([
  [2023, 2, 28, true],
  [2023, 2, 29, false],
  [2024, 2, 29, true],
  [2000, 2, 29, true],
  [1900, 2, 29, false],
  [null, 2, 29, true],
  [null, 2, 30, false],
  [2023, 4, 31, false],
  [2023, 12, 31, true],
  [2023, 13, 1, false],
  [2023, 0, 1, false],
  [2023, 1, 0, false],
  [2023, 1, 1.5, false],
])("isDay: %s-%s-%s is %s", (year, month, day, real) => {
  expect(isDay({ year, month, day })).toBe(real);
});
