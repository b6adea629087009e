import { expect, it } from "vitest";
import type { PairFound } from "../../src/nouns/findings/manyTreatments";
import { pairsShown } from "../../src/words/pairsShown";
import { manyTreatments, pair, treatment } from "./manyRecords";

/** The sentences for treatments named from the highest average down. */
const told = (names: readonly string[], pairs: readonly PairFound[]) =>
  pairsShown(
    manyTreatments({ usual: null, treatments: names.map((name) => treatment({ name, plants: 4, mean: 3 })), pairs }),
  );

const differ = (higher: string, lower: string) => pair(higher, lower, 0.01);
const open = (higher: string, lower: string) => pair(higher, lower, 0.3);

it("says that pairs are not settled, one or many", () => {
  expect(told(["straw", "bark"], [open("straw", "bark")])).toEqual(["This trial cannot tell them apart."]);
  expect(told(["straw", "bark", "hay"], [open("straw", "bark"), open("straw", "hay"), open("bark", "hay")])).toEqual([
    "None of the 3 pairs is settled.",
  ]);
  expect(told(["straw", "bark", "hay"], [differ("straw", "hay"), open("straw", "bark"), open("bark", "hay")])).toEqual([
    "Straw gave more than hay.",
    "2 pairs are not settled.",
  ]);
  expect(
    told(["straw", "bark", "hay"], [differ("straw", "hay"), differ("bark", "hay"), open("straw", "bark")]),
  ).toEqual(["Straw gave more than hay.", "Bark gave more than hay.", "1 pair is not settled."]);
});

it("says nothing of open pairs where every pair is shown to differ", () => {
  expect(told(["straw", "bark"], [differ("straw", "bark")])).toEqual(["Straw gave more than bark."]);
});

it("has a sentence for each of the three highest, and counts the pairs of the others", () => {
  const names = ["straw", "bark", "hay", "leaves", "chips", "bare"];
  const three = ["Straw gave more than bare.", "Bark gave more than bare.", "Hay gave more than bare."];
  const toBare = names.slice(0, 4).map((name) => differ(name, "bare"));
  expect(told(names, toBare)).toEqual([...three, "Of the others, 1 pair is shown to differ."]);
  expect(told(names, [...toBare, differ("leaves", "chips"), differ("chips", "bare")])).toEqual([
    ...three,
    "Of the others, 3 pairs are shown to differ.",
  ]);
});

it("names those below in a sentence of 22 words at most, and else counts them", () => {
  const below = ["one or two dry leaves", "three or four dry leaves", "five or six dry leaves"];
  const names = (last: string) => [...below, last];
  const sentence = (last: string) =>
    told(
      ["straw", ...names(last)],
      names(last).map((name) => differ("straw", name)),
    );
  // Four words of ours, fifteen of the first three names, one "and": two are left for the last name.
  expect(sentence("bare soil")).toEqual([
    "Straw gave more than one or two dry leaves, three or four dry leaves, five or six dry leaves and bare soil.",
  ]);
  expect(sentence("bare dug soil")).toEqual(["Straw gave more than 4 others."]);
});
