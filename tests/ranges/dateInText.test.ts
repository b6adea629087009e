import { describe, expect, it } from "vitest";
import { dateInText } from "../../src/ranges/dateInText";

/** A reading in short: "2023-7-5"; "-7-5" lacks its year; two bare numbers name the order they are read in. */
function said(text: string): string | null {
  const read = dateInText(text);
  if (read === null) return null;
  const [dayFirst, monthFirst] = [read.dayFirst, read.monthFirst].map(
    (day) => day && `${day.year ?? ""}-${day.month}-${day.day}`,
  );
  return read.byOrder ? `day first ${dayFirst}, month first ${monthFirst}` : String(dayFirst);
}

/** The months of the calendar in their order. */
const CALENDAR = "January February March April May June July August September October November December".split(" ");

describe("a month by its name", () => {
  it.each(CALENDAR.map((name, at) => [name, at + 1] as const))("%s is month %i", (name, month) => {
    const wanted = `2023-${month}-12`;
    for (const word of [name, name.slice(0, 3), name.toUpperCase()]) {
      for (const text of [
        `12 ${word} 2023`,
        `12-${word}-23`,
        `${word} 12, 2023`,
        `${word} 12,'23`,
        `${word} 12,23`,
        `2023 ${word} 12`,
        `2023-${word}-12`,
      ]) {
        expect(said(text)).toBe(wanted);
      }
      expect(said(`12 ${word}`)).toBe(`-${month}-12`);
      expect(said(`${word} 12`)).toBe(`-${month}-12`);
    }
  });

  it.each(["12 Juni 2023", "12 Ju", "12 2023", "July", "12", "5 x 2023", "5 stryker 2023"])("%s names none", (text) => {
    expect(said(text)).toBeNull();
  });
});

it.each([
  ["2023-12-24", "2023-12-24"],
  ["20231224", "2023-12-24"],
  ["24/12", "day first -12-24, month first null"],
  ["12/24/23", "day first null, month first 2023-12-24"],
  ["5/7/2023", "day first 2023-7-5, month first 2023-5-7"],
  ["5.7.", "day first -7-5, month first -5-7"],
  ["31/12/2099", "day first 2099-12-31, month first null"],
  ["1930-01-01", "1930-1-1"],
])("%s is %s", (text, day) => {
  expect(said(text)).toBe(day);
});

it.each([
  ["spaces side by side", "5   July \t 2023"],
  ["spaces round it", "  5 July 2023  "],
  ["spaces round the marks", "5 - July - 2023"],
  ["a space before the mark", "5 -July -2023"],
  ["a space behind the mark", "5- July- 2023"],
  ["full-width digits", "５ July ２０２３"],
  ["a dash for the hyphen", "5–July–2023"],
  ["a weekday", "Wed, 5 July 2023"],
  ["a time of day", "5 July 2023 08:30:15"],
  ["forty characters", "5 July 2023".padStart(40)],
])("passed over: %s", (_, text) => {
  expect(said(text)).toBe("2023-7-5");
});

it.each([
  ["more than forty characters", "5 July 2023".padStart(41)],
  ["a word before a date", "to 2023-07-05"],
  ["digits before a date", "12023-07-05"],
  ["digits behind a date", "2023-07-051"],
  ["digits before eight digits", "120230705"],
  ["digits behind eight digits", "202307051"],
  ["a word before the year", "x2023 July 5"],
  ["a word behind the day", "2023 July 5x"],
  ["a weekday behind", "5 July 2023 Wed"],
  ["a weekday inside a word", "xmon 5 July 2023"],
  ["a weekday in the middle", "5 Mon July 2023"],
  ["a time before", "8:30 5 July 2023"],
  ["a time in the middle", "5 8:30 July 2023"],
  ["a time with a word behind it", "5 July 2023 8:30 rain"],
  ["a mark behind two numbers", "24/6."],
  ["one number with a point", "5."],
  ["two numbers no month", "31/31"],
])("no date: %s", (_, text) => {
  expect(said(text)).toBeNull();
});
