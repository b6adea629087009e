import { expect, test } from "vitest";
import type { Known, Limits } from "../../src/nouns/known";
import { sizeRangeText } from "../../src/words/changeRange";
import { missSentence, rangeSentences } from "../../src/words/rangeSentences";

const noUpper: Known = { absent: "no-upper-limit" };
const noLower: Known = { absent: "no-lower-limit" };
const none: Known = { absent: "usual-not-above-zero" };

function told(changeRange: Limits, differenceRange: Limits | null = null) {
  return rangeSentences({ changeRange, differenceRange, unit: "g", confidence: 0.95 })[0];
}

test("rangeSentences tells two limits, one or none", () => {
  expect(told({ low: -0.0067, high: 0.9478 })).toBe("The true change may be anything from −1 % to +95 %.");
  expect(told({ low: -0.14, high: noUpper })).toBe(
    "The true change may be anything from −14 % up, with no upper limit.",
  );
  expect(told({ low: noLower, high: 0.35 })).toBe("The true change may be anything from −100 % to +35 %.");
  expect(told({ low: noLower, high: noUpper })).toBe(
    "The true change may be anything at all: this trial sets no limit.",
  );
  expect(told({ low: 0.031, high: 0.034 })).toBe("The true change may be about +3 %.");
});

test("rangeSentences tells the difference where there is no percent, and nothing where there is neither", () => {
  expect(told({ low: none, high: none }, { low: -1.2, high: 3456 })).toBe(
    "The true difference may be anything from −1.2 to +3460 g.",
  );
  expect(told({ low: none, high: none })).toBeUndefined();
});

test("a range without any limit is not said to miss", () => {
  expect(
    rangeSentences({
      changeRange: { low: noLower, high: noUpper },
      differenceRange: null,
      unit: null,
      confidence: 0.95,
    }),
  ).toHaveLength(1);
});

test.each([
  [0.95, "About 1 such range in 20 misses it."],
  [0.9, "About 1 such range in 10 misses it."],
  [0.8, "About 1 such range in 5 misses it."],
  [0.5, "About 1 such range in 2 misses it."],
  [0.99, "About 1 such range in 100 misses it."],
  [0.97, "About 1 such range in 33 misses it."],
  [0.6, "About 40 such ranges in 100 miss it."],
  [0.85, "About 15 such ranges in 100 miss it."],
])("missSentence at %d", (confidence, sentence) => {
  expect(missSentence(confidence)).toBe(sentence);
});

test("sizeRangeText tells a gain and a loss without signs, the smaller end first", () => {
  expect(sizeRangeText({ low: 0.1, high: 0.74 })).toBe("anything from 10 % to 74 %");
  expect(sizeRangeText({ low: 0.52, high: noUpper })).toBe("anything from 52 % up, with no upper limit");
  expect(sizeRangeText({ low: -0.83, high: -0.24 })).toBe("anything from 24 % to 83 %");
  expect(sizeRangeText({ low: noLower, high: -0.24 })).toBe("anything from 24 % to 100 %");
  expect(sizeRangeText({ low: none, high: none })).toBeNull();
});
