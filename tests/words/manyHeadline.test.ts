import { expect, it } from "vitest";
import type { PairFound } from "../../src/nouns/findings/manyTreatments";
import type { Verdict } from "../../src/nouns/verdict";
import { manyHeadline } from "../../src/words/manyHeadline";
import { askedMany, type PlantRow } from "./askedMany";
import { against, manyTreatments, pair, treatment } from "./manyRecords";
import { typicalMany } from "./typicalMany";

it.each(Object.entries(typicalMany))("%s: fits a cell, in at most 60 characters", (_, found) => {
  const text = manyHeadline(found);
  expect(text.length).toBeLessThanOrEqual(60);
  expect(text).not.toBe("");
});

const judged = (treatments: readonly (readonly [name: string, verdict: Verdict])[]) =>
  manyTreatments({
    usual: "bare",
    treatments: treatments.map(([name, verdict]) =>
      treatment({
        name,
        plants: 8,
        mean: 3,
        againstUsual: against({ change: 0.5, changeRange: { low: 0.2, high: 0.9 }, verdict }),
      }),
    ),
  });
const trial = (names: readonly string[], verdict: Verdict) => judged(names.map((name) => [name, verdict]));

it("names those that are up, or counts them where the names would not fit", () => {
  expect(manyHeadline(trial(["straw", "bark"], "up-enough"))).toBe("straw up; bark up");
  expect(manyHeadline(trial(["straw"], "leaning-up"))).toBe("straw leaning up");
  expect(manyHeadline(trial(["straw", "bark"], "open"))).toBe("2 not settled");
  const many = Array.from({ length: 19 }, (_, at) => `a mulch with a long name ${at}`);
  expect(manyHeadline(trial(many, "up-enough"))).toBe("19 up");
});

it("adds up the last kinds where even the counts would not fit", () => {
  const verdicts: readonly Verdict[] = [
    "up-enough",
    "down-small",
    "leaning-up",
    "leaning-down",
    "level",
    "open",
    "few",
  ];
  const each = judged(verdicts.map((verdict, at) => [`a mulch with a long name ${at}`, verdict]));
  expect(manyHeadline(each)).toBe("1 up; 1 down; 1 leaning up; 1 leaning down; 3 others");
});

it("names pairs, or counts them where the names would not fit", () => {
  const rows = (names: readonly string[]) =>
    names.flatMap((name, at) => [0, 1, 2, 3].map((plant): PlantRow => [100 * (at + 1) + 3 * plant, name]));
  expect(manyHeadline(askedMany(rows(["bare", "straw"])))).toBe("straw above bare");
  expect(manyHeadline(askedMany(rows(["bare soil", "barley straw", "wood chips", "leaf mould"])))).toBe(
    "6 pairs shown to differ",
  );
});

it("tells the clearest first, however the treatments stand, and leaves out the usual itself", () => {
  const mixed = judged([
    ["bark", "none"],
    ["hay", "few"],
    ["straw", "down-unclear"],
    ["chips", "up-small"],
  ]);
  const withUsual = { ...mixed, treatments: [...mixed.treatments, treatment({ name: "bare", plants: 8, mean: 3 })] };
  expect(manyHeadline(withUsual)).toBe("chips up; straw down; 1 too few plants; 1 no answer");
  expect(manyHeadline(trial(["straw", "bark"], "level"))).toBe("2 near level");
  expect(manyHeadline(trial(["straw"], "open-down"))).toBe("1 not settled");
});

it("uses all 60 characters of the cell", () => {
  const named = "barley-straw-in-late-spring up; oats-straw-in-late-spring up";
  expect(named).toHaveLength(60);
  expect(manyHeadline(trial(["barley-straw-in-late-spring", "oats-straw-in-late-spring"], "up-enough"))).toBe(named);
  const counts = "1 down; 1 leaning up; 1 leaning down; 1 near level; 3 others";
  expect(counts).toHaveLength(60);
  const verdicts: readonly Verdict[] = ["down-enough", "leaning-up", "leaning-down", "level", "open", "few", "none"];
  expect(manyHeadline(judged(verdicts.map((verdict, at) => [`a mulch with a long name ${at}`, verdict])))).toBe(counts);
});

it("counts the pairs that are not settled, by name or number of those that are", () => {
  const found = (pairs: readonly PairFound[]) => manyTreatments({ usual: null, treatments: [], pairs });
  const open = pair("straw", "bark", 0.3);
  expect(manyHeadline(found([pair("straw", "bare", 0.01), open, pair("bark", "bare", 0.06)]))).toBe(
    "straw above bare; 2 pairs not settled",
  );
  const names = ["oat straw", "barley straw", "leaf mould"];
  const differ = names.map((name) => pair(name, "bare soil", 0.01));
  expect(manyHeadline(found([...differ, open]))).toBe("3 pairs shown to differ; 1 pair not settled");
});
