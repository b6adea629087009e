import { expect, it } from "vitest";
import { manyHeadline } from "../../src/words/manyHeadline";
import { askedMany, type PlantRow } from "./askedMany";
import { against, manyTreatments, treatment } from "./manyRecords";
import { typicalMany } from "./typicalMany";

it.each(Object.entries(typicalMany))("%s: fits a cell, in at most 60 characters", (_, found) => {
  const text = manyHeadline(found);
  expect(text.length).toBeLessThanOrEqual(60);
  expect(text).not.toBe("");
});

const trial = (names: readonly string[], verdict: "up-enough" | "open" | "leaning-up") =>
  manyTreatments({
    usual: "bare",
    treatments: names.map((name) =>
      treatment({
        name,
        plants: 8,
        mean: 3,
        againstUsual: against({ change: 0.5, changeRange: { low: 0.2, high: 0.9 }, verdict }),
      }),
    ),
  });

it("names those that are up, or counts them where the names would not fit", () => {
  expect(manyHeadline(trial(["straw", "bark"], "up-enough"))).toBe("straw up; bark up");
  expect(manyHeadline(trial(["straw"], "leaning-up"))).toBe("straw leaning up");
  expect(manyHeadline(trial(["straw", "bark"], "open"))).toBe("2 not settled");
  const many = Array.from({ length: 19 }, (_, at) => `a mulch with a long name ${at}`);
  expect(manyHeadline(trial(many, "up-enough"))).toBe("19 up");
});

it("names pairs, or counts them where the names would not fit", () => {
  const rows = (names: readonly string[]) =>
    names.flatMap((name, at) => [0, 1, 2, 3].map((plant): PlantRow => [100 * (at + 1) + 3 * plant, name]));
  expect(manyHeadline(askedMany(rows(["bare", "straw"])))).toBe("straw above bare");
  expect(manyHeadline(askedMany(rows(["bare soil", "barley straw", "wood chips", "leaf mould"])))).toBe(
    "6 pairs shown to differ",
  );
});
