import { expect, it } from "vitest";
import { unevenness } from "../../src/questions/unevenness";
import { codes, found, given } from "./range";

it("has one figure a treatment, in order of appearance, and all pooled", () => {
  const call = given({ amounts: [4, 9, 6, 11], treatments: ["b", "a", "b", "a"] });
  const { treatments, all, withinBeds } = found(unevenness(call));
  expect(treatments.map(({ name, mean, lowest }) => [name, mean, lowest])).toEqual([
    ["b", 5, 4],
    ["a", 10, 9],
  ]);
  expect(all).toMatchObject({ name: null, plants: 4, mean: 7.5 });
  expect(withinBeds).toBe(false);
  expect(found(unevenness(given({ amounts: [4, 5, 6], beds: [1, 1, 2] }))).withinBeds).toBe(true);
});

it("keeps the places of rows without a label", () => {
  const call = given({ amounts: [4, 5, 6], treatments: ["a", null, "a"] });
  expect(found(unevenness(call)).leftOut.map(({ cell }) => cell)).toEqual(["B3"]);
});

it.each([
  [[4, 5, 6], ["C12"]],
  [
    [4, 4, 4],
    ["C17", "C12"],
  ],
  [[4], ["C12"]],
  [
    [4, 5, 6, 60],
    ["C06", "C12"],
  ],
  [
    ["4 kg", 5],
    ["C14", "C12"],
  ],
])("%j raises %j", (amounts, due) => {
  expect(codes(found(unevenness(given({ amounts }))).cautions())).toEqual(due);
});

it("C17 wants every treatment to be without variation", () => {
  const treatments = ["a", "a", "b", "b"];
  expect(codes(found(unevenness(given({ amounts: [4, 4, 5, 5], treatments }))).cautions())).toContain("C17");
  expect(codes(found(unevenness(given({ amounts: [4, 4, 5, 6], treatments }))).cautions())).not.toContain("C17");
});

it("C17 asks nothing of a treatment of one plant", () => {
  expect(codes(found(unevenness(given({ amounts: [4, 4, 5], treatments: ["a", "a", "b"] }))).cautions())).toContain(
    "C17",
  );
});

it("refuses an empty range, and one that is not given", () => {
  expect(unevenness(given({ amounts: ["lost"] }))).toMatchObject({ problem: "no-usable-plants" });
  expect(unevenness({})).toEqual({ problem: "missing-argument", argument: "amounts" });
});

it("reads a column so long that work on every pair of plants would never end", () => {
  const amounts = Array.from({ length: 100_000 }, (_, at) => 5 + (at % 7));
  expect(found(unevenness(given({ amounts }))).all.plants).toBe(100_000);
});
