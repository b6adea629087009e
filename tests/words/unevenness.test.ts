import { expect, it } from "vitest";
import type { Absence } from "../../src/nouns/known";
import { unevenness as asked } from "../../src/questions/unevenness";
import { tellUnevenness } from "../../src/words/unevenness";
import { found, given } from "../questions/range";
import { oneUnevenness, unevenness } from "./records";

const finding = (facts: Parameters<typeof oneUnevenness>[0]) => {
  const all = oneUnevenness(facts);
  return tellUnevenness(unevenness({ all, treatments: [all] })).finding();
};
const range = { low: 0.2, high: 0.5 };

it.each([
  [12, "With just 12 plants, the true figure may be 20 % to 50 %."],
  [13, "With 13 plants, the true figure may be 20 % to 50 %."],
])("calls up to a dozen plants few: %d", (plants, sentence) => {
  expect(finding({ plants, unevenness: 0.3, range })).toBe(`Plants treated alike differed by about 30 %. ${sentence}`);
});

it.each([
  [4, "average-zero", "The average is 0, so there is no share of it to take."],
  [4, "average-below-zero", "The average is below 0, so there is no share of it to take."],
  [1, "one-plant-only", "One plant shows no unevenness. It takes two or more that were treated alike."],
] as const)("says why %d plants have no unevenness: %s", (plants, absent, sentence) => {
  expect(finding({ plants, unevenness: { absent } as Absence })).toBe(sentence);
});

const twoTreatments = ["straw", "bare", "straw", "bare"];
const fourBeds = ["north", "south", "east", "west"];
const eachAlone =
  "No treatment here shows unevenness. It takes two or more plants treated alike, and an average above 0.";
const usedUp =
  "With treatments and beds taken out, nothing is left to show unevenness. It takes more plants in each bed.";
const averageZero = "The average is 0, so there is no share of it to take.";
const onlyOne = "One plant shows no unevenness. It takes two or more that were treated alike.";

it.each([
  ["each plant has a treatment of its own", { amounts: [3, 4, 5], treatments: ["straw", "bare", "bark"] }, eachAlone],
  ["one treatment has one plant, one bore nothing", { amounts: [3, 0, 0], treatments: ["a", "b", "b"] }, eachAlone],
  ["each plant has a bed of its own", { amounts: [3, 4, 5, 6], treatments: twoTreatments, beds: fourBeds }, usedUp],
  [
    "nothing grew, in two beds",
    { amounts: [0, 0, 0, 0], treatments: twoTreatments, beds: ["n", "n", "s", "s"] },
    averageZero,
  ],
  ["one plant stands in one bed", { amounts: [3], beds: ["north"] }, onlyOne],
])("says why there is none where %s", (_, named, sentence) => {
  expect(tellUnevenness(found(asked(given(named as Parameters<typeof given>[0])))).finding()).toBe(sentence);
});
