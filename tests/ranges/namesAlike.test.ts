import { expect, it } from "vitest";
import { namesAlike } from "../../src/ranges/namesAlike";

it.each([
  ["bare", "bare soil"],
  ["grass", "grass clippings"],
  ["woodchip", "wood chip"],
  ["woodchip", "wood-chip"],
  ["straw", "starw"],
  ["straw", "strw"],
  ["straw", "strawe"],
  ["straw", "stram"],
  ["grass clippings", "gras clippins"],
  ["row 1", "row1"],
  ["no straw", "no straw deep"],
  ["woodchip", "woodshop"],
  [`${"a".repeat(39)}b`, `${"a".repeat(39)}c`],
  ["grass clippings from the far meadow, spread thick", "grass clippings from the far meadow (spread thick)"],
])("%s may be %s", (one, other) => {
  expect(namesAlike(one, other)).toBe(true);
  expect(namesAlike(other, one)).toBe(true);
});

it.each([
  ["straw", "woodchip"],
  ["b1-1", "b1-2"],
  ["plant 1", "plant 12"],
  ["straw", "no straw"],
  ["straw", "straw and manure"],
  ["straw", "straw + manure"],
  ["hay", "bay"],
  ["bed a", "bed b"],
  ["row 1 a", "row 1 b"],
  ["p12a", "p12b"],
  ["b1234-1", "c1234-1"],
  ["", "bare"],
  ["+", "-"],
  ["straw", "stamp"],
  ["a".repeat(41), "b".repeat(41)],
  ["a".repeat(40), "a".repeat(41)],
  ["plot 12", "plot 1 2"],
  ["a bed north", "b bed north"],
  ["straw hay", "hay straw"],
  ["bare straw", "bare soil wet"],
  ["hay", "hays"],
  ["compost", "kompast"],
  ["woven", "non woven"],
  ["mulch", "mulch not dug"],
  ["mulch", "without mulch"],
  ["mulch", "mulch with net"],
  ["mulch", "mulch plus net"],
])("%s is not %s", (one, other) => {
  expect(namesAlike(one, other)).toBe(false);
  expect(namesAlike(other, one)).toBe(false);
});

/** Every text that one slip makes of another: a letter left out, two neighbours swapped, a letter changed or added. */
function oneSlipFrom(text: string): ReadonlySet<string> {
  const parts = Array.from({ length: text.length + 1 }, (_, at) => [text.slice(0, at), text.slice(at)] as const);
  return new Set(
    parts.flatMap(([before, [first = "", second = "", ...rest]]) => [
      before + second + rest.join(""),
      before + second + first + rest.join(""),
      ...LETTERS.flatMap((letter) => [
        before + letter + second + rest.join(""),
        before + letter + first + second + rest.join(""),
      ]),
    ]),
  );
}

const LETTERS = ["a", "b"];

/** Every text of so many of the letters. */
function textsOf(length: number): readonly string[] {
  return length === 0 ? [""] : textsOf(length - 1).flatMap((text) => LETTERS.map((letter) => text + letter));
}

it("a name of four to six letters is like those that one slip makes of it, and no other", () => {
  const texts = [...textsOf(4), ...textsOf(5), ...textsOf(6)];
  for (const one of texts) {
    const slips = oneSlipFrom(one);
    const alike = texts.filter((other) => namesAlike(one, other));
    expect(alike).toEqual(texts.filter((other) => other === one || slips.has(other)));
  }
});

// R 4: adist("strawbed", c("xtrawbey", "xxrawbey")) gives 2 and 3
it("a name of eight letters may have two slips, not three; letters swapped are not changed again", () => {
  expect(namesAlike("strawbed", "xtrawbey")).toBe(true);
  expect(namesAlike("strawbed", "xxrawbey")).toBe(false);
  // Damerau's restricted distance of "ca" and "abc" is 3; with letters put between the swapped ones it would be 2
  expect(namesAlike("castraws", "abcstraws")).toBe(false);
});
