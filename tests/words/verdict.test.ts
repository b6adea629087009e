import { expect, test } from "vitest";
import type { Verdict } from "../../src/nouns/verdict";
import { verdictText } from "../../src/words/verdict";

/** METHODS 6.1, column "In the cell", and its mirror. */
const inTheCell: Readonly<Record<Verdict, string>> = {
  "up-enough": "Up, enough to matter",
  "up-small": "Up, too small to matter",
  "up-unclear": "Up, how far unclear",
  "down-enough": "Down, enough to matter",
  "down-small": "Down, too small to matter",
  "down-unclear": "Down, how far unclear",
  level: "Near level",
  "open-up": "Not settled, may be up",
  "open-down": "Not settled, may be down",
  open: "Not settled",
  "leaning-up": "Leaning up, too few plants",
  "leaning-down": "Leaning down, too few plants",
  few: "Too few plants",
  none: "No answer",
};

test.each(Object.entries(inTheCell))("verdictText of %s is %s", (verdict, text) => {
  expect(verdictText(verdict as Verdict)).toBe(text);
});
