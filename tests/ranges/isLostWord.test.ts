import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isLostWord } from "../../src/ranges/isLostWord";

describe("isLostWord: lost, dead, died, stolen, broken or missing plant, alone in any letter case", () => {
  it.each(["lost", "LOST", "Dead", " died ", "stolen", "Broken", "missing plant", "Missing  Plant"])("%j", (text) => {
    expect(isLostWord(text)).toBe(true);
  });
});

describe("isLostWord: followed by punctuation, a bracket, to, by, on or a date", () => {
  it.each([
    "lost (slugs)",
    "lost [wind]",
    "died – slugs",
    "dead, slugs",
    "dead: frost",
    "dead?",
    "lost to slugs",
    "stolen by birds",
    "lost on 14 July",
    "lost on the 14th",
    "lost 14 July",
    "lost 14th of July 2023",
    "lost July 14",
    "lost Sept. 3rd, 2023",
    "lost July",
    "lost 14/7",
    "lost 14/07/2023",
    "lost 14.7.",
    "lost 14-07-23",
    "lost 2023-07-14",
    "lost 14 July (slugs)",
    "lost 14 July to slugs",
    "lost\u00A0by wind",
    "broken, still cropping",
  ])("%s", (text) => {
    expect(isLostWord(text)).toBe(true);
  });
});

describe("isLostWord: not when it goes on in another way, or with an amount in it", () => {
  it.each([
    "broken stem, still cropping",
    "lost 2 fruit",
    "lost (2 fruit)",
    "lost: 310 g",
    "lost 14 July, 310 g",
    "lost 14 July still cropping",
    "lost 3/4 of fruit",
    "lost 1.5 kg",
    "lost on 3 stakes",
    "lost some leaves",
    "lost tomorrow",
    "lost leaves to slugs",
    "lostxjuly",
    "lost bystander",
    "lost maybe",
    "deadhead",
    "lost2",
    "missing",
    "not lost",
    "half dead",
    "",
  ])("%j", (text) => {
    expect(isLostWord(text)).toBe(false);
  });
});

// a reader that goes back over the text again and again would outlast the runner's time limit
it("isLostWord reads a note of a million characters once", () => {
  const notes = [" ", "14 july ", "1/", "on "].map((piece) => `lost ${piece.repeat(300_000)}`);
  expect(notes.map(isLostWord)).toEqual([true, true, false, true]);
});

it("isLostWord of a lost-word in brackets with any letters is true", () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[a-z ]{0,30}$/), (cause) => {
      expect(isLostWord(`Lost (${cause})`)).toBe(true);
    }),
  );
});
