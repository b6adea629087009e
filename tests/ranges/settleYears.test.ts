import { describe, expect, it } from "vitest";
import { dayOf, type WrittenDay } from "../../src/nouns/day";
import { settleYears } from "../../src/ranges/settleYears";

const day = (text: string): WrittenDay => {
  const [year = "", month = "", date = ""] = text.split("-");
  return { year: year === "" ? null : Number(year), month: Number(month), day: Number(date) };
};

function years(texts: readonly string[]): readonly (number | null)[] {
  const days = texts.map(day);
  const { serial } = settleYears(days);
  return days.map((one) => {
    const number = serial(one);
    return number === null ? null : dayOf(number).year;
  });
}

describe("beside days with a year", () => {
  it.each([
    [
      ["2023-6-24", "-7-5", "2023-8-30"],
      [2023, 2023, 2023],
    ],
    [
      ["2023-11-24", "-12-30", "-1-5", "2024-2-1"],
      [2023, 2023, 2024, 2024],
    ],
    [
      ["2023-12-30", "-1-5"],
      [2023, 2024],
    ],
    [
      ["2024-1-5", "-12-30"],
      [2024, 2023],
    ],
    [
      ["2023-6-24", "2024-8-30", "-7-5"],
      [2023, 2024, null],
    ],
    [
      ["2023-3-1", "-2-29"],
      [2023, 2024],
    ],
  ])("%s", (texts, wanted) => {
    expect(years(texts)).toEqual(wanted);
  });

  it("says that years are known", () => {
    expect(settleYears([day("2023-6-24"), day("-7-5")]).known).toBe(true);
  });
});

describe("where no day has a year", () => {
  function daysBetween(texts: readonly string[]): readonly number[] {
    const days = texts.map(day);
    const { serial, known } = settleYears(days);
    expect(known).toBe(false);
    const numbers = days.map((one) => serial(one) ?? Number.NaN);
    return numbers.map((number) => number - (numbers[0] ?? 0));
  }

  it.each([
    [
      ["-6-24", "-7-5"],
      [0, 11],
    ],
    [
      ["-12-30", "-1-5"],
      [0, 6],
    ],
    [
      ["-1-5", "-12-30"],
      [0, 359],
    ],
    [
      ["-11-1", "-2-1", "-12-1"],
      [0, 92, 30],
    ],
    [
      ["-2-28", "-3-1"],
      [0, 1],
    ],
    [
      ["-2-28", "-2-29", "-3-1"],
      [0, 1, 2],
    ],
    [
      ["-2-29", "-3-1", "-4-20", "-6-10", "-8-1", "-9-20", "-11-10", "-12-1", "-1-5"],
      [0, 1, 51, 102, 154, 204, 255, 276, 311],
    ],
    [
      ["-2-28", "-3-1", "-3-29"],
      [0, 1, 29],
    ],
    [
      ["-1-5", "-1-5", "-12-30"],
      [0, 0, 359],
    ],
    [
      ["-7-1", "-1-1"],
      [0, -181],
    ],
    [
      ["-7-5", "-6-24"],
      [0, -11],
    ],
    [
      ["-3-5", "-9-20"],
      [0, 199],
    ],
  ])("%s", (texts, wanted) => {
    expect(daysBetween(texts)).toEqual(wanted);
  });
});
