import { expect, it } from "vitest";
import type { TwoTreatments } from "../../src/nouns/findings/twoTreatments";
import type { Absence, Limits } from "../../src/nouns/known";
import { whyNoAnswer } from "../../src/words/whyNoAnswer";
import { group, twoTreatments } from "./records";

const neither = (absent: "one-plant" | "all-equal" | "new-below-zero" | "usual-not-above-zero"): Limits => ({
  low: { absent },
  high: { absent },
});
const newBelow: Absence = { absent: "new-below-zero" };

/** What is not said is the ordinary: a change and both ranges are known. */
const why = (facts: Partial<Omit<TwoTreatments, "cautions" | "labelSwap">>) =>
  whyNoAnswer(
    twoTreatments({
      usual: group("usual", { name: null, plants: 3, mean: 10, unevenness: 0.2 }),
      tried: group("new", { name: null, plants: 3, mean: 12, unevenness: 0.2 }),
      difference: 2,
      differenceRange: { low: -3, high: 7 },
      change: 0.2,
      changeRange: { low: -0.3, high: 0.9 },
      pValue: 0.3,
      verdict: "none",
      swap: null,
      ...facts,
    }),
  );

it.each([
  ["a group without plants", { nothingIn: "B2:B9" }, "There are no usable plants in B2:B9."],
  [
    "one plant, so that no difference has a range",
    { differenceRange: neither("one-plant") },
    "A group of one plant gives no range, so nothing here measures luck.",
  ],
  [
    "equal plants, where only the percent range is missing",
    { changeRange: neither("all-equal") },
    "Within each group all values are equal, so nothing here measures luck. Check the data.",
  ],
  [
    "a new average below 0",
    { change: newBelow, changeRange: neither("new-below-zero") },
    "A percent needs a new average that is not below 0.",
  ],
  [
    "a usual average that is not above 0",
    { change: { absent: "usual-not-above-zero" } as const, changeRange: neither("usual-not-above-zero") },
    "A percent needs a usual average above 0.",
  ],
  ["a change without a verdict", {}, "The numbers give no range, so nothing here measures luck."],
])("says what is missing: %s", (_, facts, sentence) => {
  expect(why(facts)).toBe(sentence);
});
