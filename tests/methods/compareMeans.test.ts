import { describe, expect, it } from "vitest";
import { changeOf, compareMeans } from "../../src/methods/compareMeans";
import { near } from "../near";
import reference from "../reference/onePiece.json";

const { usual, tried } = reference.cases;

describe("compareMeans takes each layout to its own test (p by R's t.test())", () => {
  it.each([
    ["separate", reference.cases.welchP],
    ["equal unevenness", reference.cases.studentP],
    ["pairs", reference.cases.pairedP],
  ] as const)("%s", (layout, p) => {
    const { pValue, changeRange } = compareMeans(usual, tried, { layout, confidence: 0.95 });
    near("p", Number(pValue), p);
    expect(Number(changeRange.low) > 0).toBe(p < 0.05);
  });
});

it("one plant against several: change and difference, and why there is no more", () => {
  const found = compareMeans([10], [12, 14], { layout: "separate", confidence: 0.95 });
  const alone = { absent: "one-plant" };
  expect(found).toMatchObject({
    difference: 3,
    t: alone,
    pValue: alone,
    changeRange: { low: alone, high: alone },
    g: null,
  });
  near("change", Number(found.change), 0.3);
});

it("a usual average of 0: a difference with its range, and no percent", () => {
  const found = compareMeans([0, 0, 0], [1, 2, 3], { layout: "separate", confidence: 0.95 });
  const none = { absent: "usual-not-above-zero" };
  expect(found).toMatchObject({ difference: 2, change: none, changeRange: { low: none, high: none } });
  expect(Number(found.differenceRange.low)).toBeLessThan(2);
});

it("all plants equal: the reason stands in the ranges", () => {
  const equal = { absent: "all-equal" };
  const found = compareMeans([5, 5], [6, 6], { layout: "separate", confidence: 0.95 });
  expect(found).toMatchObject({ difference: 1, t: equal, differenceRange: { low: equal, high: equal } });
});

it.each([
  [4, 3, -0.25],
  [4, 0, -1],
  [0, 3, { absent: "usual-not-above-zero" }],
  [-2, 3, { absent: "usual-not-above-zero" }],
  [2, -1, { absent: "new-below-zero" }],
])("from %d to %d is a change of %j", (before, after, change) => {
  expect(changeOf(before, after)).toEqual(change);
});
