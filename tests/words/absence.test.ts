import { expect, test } from "vitest";
import type { Absence } from "../../src/nouns/known";
import { absenceText } from "../../src/words/absence";
import { beginsWithLostWord, isNoneWord } from "./dataWords";

/** METHODS section 8 where it gives the text. */
const texts: Readonly<Record<Absence["absent"], string>> = {
  "one-plant": "one plant: no unevenness",
  "one-plant-only": "one plant",
  "all-equal": "all values equal: check the data",
  "no-usable-plants": "no usable plants",
  "no-upper-limit": "no upper limit",
  "no-lower-limit": "no lower limit above −100 %",
  "single-figures": "one figure each: no range",
  "usual-not-above-zero": "usual average is not above 0: no percent",
  "new-below-zero": "new average is below 0: no percent",
  "average-zero": "average is 0",
  "average-below-zero": "average is below 0",
  "total-only": "a total does not say",
  "some-not-recorded": "not known: 2 not recorded",
  "no-losses": "no losses",
  "no-degrees-of-freedom": "–",
  "too-few-plants": "none: too few plants",
  "not-practical": "more than 500: not practical",
  "zero-total": "a total is 0: no percent",
  weights: "weights: no such range",
  "luck-of-counting": "never: luck in the counts may do it",
  "one-trial": "one trial: no range",
  "no-extra": "no extra to pay for",
  "no-next-planting": "give next_plants to see this",
};

test.each(Object.entries(texts))("absenceText of %s is %s", (absent, text) => {
  expect(absenceText(absent === "some-not-recorded" ? { absent, count: 2 } : ({ absent } as Absence))).toBe(text);
});

test("no absence text is read as data again, the dash for a rank test's df aside", () => {
  const asData = Object.values(texts).filter((text) => isNoneWord(text) || beginsWithLostWord(text));
  expect(asData).toEqual(["–"]);
});
