import { expect, test } from "vitest";
import { blankNotes } from "../../src/nouns/trialNotes";
import { inMainMeasure, showsMainMeasure } from "../../src/words/mainMeasure";
import { group, strawFinding } from "../pane/strawFinding";
import { typicalTellable } from "./report/tellable";

const grams = { ...blankNotes, unit: "grams" };
const lessWanted = { size: 0.1, lessWanted: true, given: true };

/** A comparison under these headings, in a unit. */
const headed = (usual: string, tried: string, unit: string | null) =>
  strawFinding({ unit, usual: group("usual", usual, [2, 3, 4]), tried: group("new", tried, [3, 5, 4]) });

test.each([
  ["g", "grams", true],
  ["g", "Gram", true],
  ["kg", "kilos", true],
  ["kg", "grams", false],
  ["g", "fruit", false],
  ["cm", "cm", true],
  ["cm", "c", false],
])("a column in %s shows a measure in %s: %s", (unit, noted, shows) => {
  expect(showsMainMeasure(headed("Bare soil", "Straw", unit), { ...blankNotes, unit: noted })).toBe(shows);
});

test.each([
  ["Bare soil", "Straw", "grams", true],
  ["Bare soil fruit", "Straw fruit", "grams", false],
  ["Bare soil fruits", "Straw fruits", "fruit", true],
  ["Pods, none", "Pods, straw", "grams", false],
  ["Days to half, bare", "Days to half, straw", "grams", false],
  ["Fruitful", "Daylight", "grams", true],
])("under %s and %s a column without a unit shows %s: %s", (usual, tried, unit, shows) => {
  expect(showsMainMeasure(headed(usual, tried, null), { ...blankNotes, unit })).toBe(shows);
});

test("a measure wanted to be more is not the one that is wanted to be less", () => {
  const days = strawFinding({ unit: null, worthwhile: lessWanted });
  expect(showsMainMeasure(days, grams)).toBe(false);
  expect(showsMainMeasure(days, { ...grams, worthwhile: -0.1 })).toBe(true);
  expect(showsMainMeasure(strawFinding({ unit: null }), { ...grams, worthwhile: -0.1 })).toBe(false);
});

test("without a unit in the notes nothing is known, and trials of their own are no plants", () => {
  expect(showsMainMeasure(strawFinding(), blankNotes)).toBe(false);
  for (const [, finding] of typicalTellable) {
    if (finding.finding === "many-trials") expect(showsMainMeasure(finding, grams)).toBe(false);
  }
});

test("only a finding without a unit of its own gets the measure's", () => {
  expect(inMainMeasure(strawFinding({ unit: null }), grams).unit).toBe("grams");
  const inGrams = strawFinding();
  expect(inMainMeasure(inGrams, grams)).toBe(inGrams);
  const counted = headed("Bare soil pods", "Straw pods", null);
  expect(inMainMeasure(counted, grams)).toBe(counted);
});
