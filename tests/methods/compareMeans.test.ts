import { describe, expect, it } from "vitest";
import { changeOf, compareMeans } from "../../src/methods/compareMeans";
import { near } from "../near";
import reference from "../reference/onePiece.json";
import ranges from "../reference/percentRange.json";
import { figure } from "./found";

const { usual, tried } = reference.cases;

describe("compareMeans takes each layout to its own test and its own range of the change (R)", () => {
  const { welchP, welchG, studentP, pooledG, pairedP, pairedG } = reference.cases;
  it.each([
    ["separate", "separate", welchP, welchG],
    ["equal unevenness", "pooled", studentP, pooledG],
    ["pairs", "paired", pairedP, pairedG],
  ] as const)("%s", (layout, method, p, reach) => {
    const { pValue, changeRange, g } = compareMeans(usual, tried, { layout, confidence: 0.95 });
    near("p", figure(pValue), p);
    near("g", g ?? Number.NaN, reach);
    // R's PlantGrowth, as in onePiece.R; a limit is a root less 1
    const range = ranges.cases.find(
      (known) => known.trial === "plantGrowth2" && known.method === method && known.confidence === 0.95,
    );
    near("low", 1 + figure(changeRange.low), 1 + Number(range?.low), { relative: 1e-11 });
    near("high", 1 + figure(changeRange.high), 1 + Number(range?.high), { relative: 1e-11 });
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

it("one plant each and a usual one of 0: no percent has its own reason, and so has its range", () => {
  const none = { absent: "usual-not-above-zero" };
  const found = compareMeans([0], [2], { layout: "separate", confidence: 0.95 });
  expect(found).toMatchObject({ change: none, changeRange: { low: none, high: none }, t: { absent: "one-plant" } });
});
