import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readAmount } from "../../src/ranges/readAmount";
import { near } from "../near";

const read = (value: number, unit: string | null, marked = false) => ({
  amount: "read",
  value,
  unit,
  marked,
  doubtful: false,
  otherwise: null,
});

describe("readAmount reads a unit typed after the number", () => {
  it.each([
    ["0.235kg", read(0.235, "kg")],
    ["177 g", read(177, "g")],
    ["177 Grams", read(177, "g")],
    ["2 lbs.", read(2, "lb")],
    ["1 lb 4 oz", read(1.25, "lb")],
    ["1lb4oz", read(1.25, "lb")],
    ["1 lb, 4 oz", read(1.25, "lb")],
    ["1 lb and 4 oz", read(1.25, "lb")],
    ["1 lb & 4 oz", read(1.25, "lb")],
    ["1 kg 200 g", read(1.2, "kg")],
    ["2 lb 3½ oz", read(2.21875, "lb", true)],
    ["2½ lb", read(2.5, "lb", true)],
    ["1/2 lb", read(0.5, "lb", true)],
    ["0,726 kg", read(0.726, "kg", true)],
    ["1,250 kg", read(1.25, "kg", true)],
    ['12"', read(12, "in")],
    ["6′", read(6, "ft")],
    ["３５０\u00A0ｇ", read(350, "g")],
    ["-5 g", read(-5, "g")],
  ])("%s", (text, amount) => {
    expect(readAmount(text)).toEqual(amount);
  });

  it("feet and inches are a compound too", () => {
    const height = readAmount("5'4\"");
    near("feet", height.amount === "read" ? height.value : Number.NaN, 5 + 4 / 12, { relative: Number.EPSILON });
  });
});

describe("readAmount reads the number inside a mark or a word, and says so", () => {
  it.each([
    ["506*", 506],
    ["approx 179", 179],
    ["179 approx.", 179],
    ["506 (approx)", 506],
    ["~3", 3],
    ["12?", 12],
    ["ca. 5", 5],
    ["c. 5", 5],
    ["about 7", 7],
    ["About 2½", 2.5],
    ["506.", 506],
    ["2+1", 3],
    ["2 + 1 + 4", 7],
    ["2½", 2.5],
    ["2 ½", 2.5],
    ["2 1/2", 2.5],
    ["½", 0.5],
    ["3,5", 3.5],
    ["1,250.5", 1250.5],
  ])("%s", (text, value) => {
    expect(readAmount(text)).toEqual(read(value, null, true));
  });

  it.each(["~", "≈", "*", "?", "†", "‡"])("%s before or after the number", (mark) => {
    expect(readAmount(`${mark}506`)).toEqual(read(506, null, true));
    expect(readAmount(`506 ${mark}`)).toEqual(read(506, null, true));
  });

  it.each(["!", "#", ".", ",", ";", ":", "…", "()", "[]"])("%s after the number, and not before it", (mark) => {
    expect(readAmount(`506 ${mark}`)).toEqual(read(506, null, true));
    expect(readAmount(`${mark} 506`)).toEqual({ amount: "unreadable" });
  });

  it.each([
    "about",
    "approx",
    "approximately",
    "around",
    "c.",
    "ca",
    "circa",
    "est.",
    "estimate",
    "estimated",
    "nearly",
    "Roughly",
  ])("“%s” before the number", (word) => {
    expect(readAmount(`${word} 179`)).toEqual(read(179, null, true));
  });

  it("a sum's unit may stand behind each number or behind the last", () => {
    expect(readAmount("200 g + 310 g")).toEqual(read(510, "g", true));
    expect(readAmount("200+310 g")).toEqual(read(510, "g", true));
    expect(readAmount("1 kg + 250 g")).toEqual(read(1.25, "kg", true));
  });
});

describe("readAmount reads plain digits in a text as they are", () => {
  it.each([
    ["506", 506],
    [" 12.5 ", 12.5],
    ["0", 0],
    [".5", 0.5],
    ["−3", -3],
  ])("%j", (text, value) => {
    expect(readAmount(text)).toEqual(read(value, null));
  });
});

describe("readAmount says what it cannot tell", () => {
  it("1,250 is 1250, doubtful, else 1.25", () => {
    expect(readAmount("1,250")).toEqual({ ...read(1250, null, true), doubtful: true, otherwise: 1.25 });
    expect(readAmount("1,250 g")).toEqual({ ...read(1250, "g", true), doubtful: true, otherwise: 1.25 });
  });

  it("1.250 is 1.25 and is listed with its other reading", () => {
    expect(readAmount("1.250")).toEqual({ ...read(1.25, null, true), otherwise: 1250 });
  });

  it("a doubt in one part of a sum is a doubt in the sum", () => {
    expect(readAmount("1,250+1")).toEqual({ ...read(1251, null, true), doubtful: true, otherwise: 2.25 });
  });
});

describe("readAmount cannot read", () => {
  it.each([
    ["a count and a note", "2 (1 split)"],
    ["a count and a weight", "2 (310g)"],
    ["two numbers", "3 120"],
    ["two weights", "200 g 310 g"],
    ["a bare slash", "3/2"],
    ["a day and month", "5/7"],
    ["a half with a slash alone, which may be a date", "1/2"],
    ["a date in figures", "12.5.24"],
    ["a date", "14 July"],
    ["an ISO date", "2023-07-14"],
    ["an ordinal", "3rd"],
    ["a span", "10-12"],
    ["at least", "12+"],
    ["less than", "<5"],
    ["a product", "2 x 250 g"],
    ["a percent", "15%"],
    ["an exponent", "1e3"],
    ["a footnote in superscript", "506¹"],
    ["an unknown unit", "3 fruit"],
    ["a compound without its last unit", "1 lb 4"],
    ["a compound upside down", "4 oz 1 lb"],
    ["a compound of two kinds", "1 kg 5 cm"],
    ["a sum with a negative part", "-2+3"],
    ["a sum of two kinds", "1 g + 1 cm"],
    ["a share", "1 in 4"],
    ["a unit alone", "kg"],
    ["a mark alone", "?"],
    ["a word alone", "about"],
    ["nothing", ""],
    ["a number no computer holds", `${"9".repeat(120)} kg ${"9".repeat(70)}`],
  ])("%s: %s", (_name, text) => {
    expect(readAmount(text)).toEqual({ amount: "unreadable" });
  });
});

it("readAmount reads back every number that a sheet shows as plain digits", () => {
  const plain = fc.double({ min: 1e-6, max: 1e15, noNaN: true }).filter((number) => !String(number).includes("e"));
  fc.assert(
    fc.property(plain, (number) => {
      const said = readAmount(String(number));
      expect(said.amount === "read" && (said.value === number || said.otherwise === number)).toBe(true);
    }),
  );
});

it("readAmount never throws and never gives a number that is not finite", () => {
  const piece = fc.constantFrom(
    "1",
    "250",
    ",",
    ".",
    "'",
    " ",
    "\u00A0",
    "½",
    "/",
    "+",
    "-",
    "lb",
    "oz",
    "g",
    "~",
    "(",
    "approx",
  );
  const text = fc.oneof(
    fc.string({ unit: "grapheme" }),
    fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join("")),
  );
  fc.assert(
    fc.property(text, (any) => {
      const said = readAmount(any);
      const numbers = said.amount === "read" ? [said.value, said.otherwise ?? 0] : [];
      expect(numbers.every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

it.each(["9", "9,", "1.", "1 ", "1+", "'1", " ", "½", "lb ", "1 lb "])(
  "readAmount gives up on a million characters of %j within the runner's time limit",
  (piece) => {
    const text = `x${piece.repeat(1_000_000 / piece.length)}x`;
    expect(readAmount(text)).toEqual({ amount: "unreadable" });
  },
);
