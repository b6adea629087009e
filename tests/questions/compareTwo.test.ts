import { expect, it } from "vitest";
import { compareTwo } from "../../src/questions/compareTwo";
import { found, given } from "./range";

const plants = { usual: [4, 5, 6, 5], new: [7, 8, 9, 8] };

it("has its defaults", () => {
  const defaults = { how: "separate", asked: "separate", confidence: 0.95, lostPlants: "leave out" };
  expect(found(compareTwo(given(plants)))).toMatchObject({ ...defaults, worthwhile: { size: 0.1, given: false } });
});

it("'beds' are pairs, and it remembers the word", () => {
  expect(found(compareTwo(given({ ...plants, how: "Beds" })))).toMatchObject({ how: "pairs", asked: "beds" });
});

it("refuses an option before it reads the ranges", () => {
  expect(compareTwo(given({ how: "t test" }))).toMatchObject({ problem: "unknown-choice", argument: "how" });
  expect(compareTwo(given({ confidence: 95 }))).toMatchObject({ problem: "percent-as-points" });
  expect(compareTwo({})).toEqual({ problem: "missing-argument", argument: "usual" });
});
