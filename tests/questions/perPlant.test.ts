import { expect, it } from "vitest";
import { perPlant } from "../../src/questions/perPlant";
import { codes, found, given, range } from "./range";

it("counts plants set out, lost, not recorded and counted", () => {
  const answer = found(perPlant(given({ amounts: ["Straw (g)", 400, "lost", "?", 600], planted: 4 })));
  expect(answer).toMatchObject({
    name: "Straw",
    unit: "g",
    setOut: 4,
    lost: 1,
    notRecorded: 1,
    counted: 2,
    total: 1000,
  });
  expect(answer.perPlant).toBe(500);
  expect(answer.perPlantSetOut).toEqual({ absent: "some-not-recorded", count: 1 });
});

it.each([
  [[4, 5, 6], ["C12"]],
  [
    [4, 5, "lost"],
    ["C04", "C12"],
  ],
  [
    [4, 5, 6, 50],
    ["C06", "C12"],
  ],
  [
    [4, 5, "~6"],
    ["C14", "C12"],
  ],
])("%j raises %j", (amounts, due) => {
  expect(codes(found(perPlant(given({ amounts }))).cautions())).toEqual(due);
});

it("all lost is a finding without an average; no plants at all is none", () => {
  const answer = found(perPlant(given({ amounts: ["lost", "dead"] })));
  expect(answer.perPlant).toEqual({ absent: "no-usable-plants" });
  expect(answer).toMatchObject({ lost: 2, setOut: 2, counted: 0, total: 0, perPlantSetOut: 0 });
  expect(perPlant(given({ amounts: ["?", null] }))).toMatchObject({ problem: "no-usable-plants" });
});

it("refuses numbers that are not as many as planted", () => {
  expect(perPlant(given({ amounts: [1, 2], planted: 3 }))).toEqual({
    problem: "numbers-for-planted",
    numbers: 2,
    planted: 3,
  });
});

it("labels that stand beside amounts with a heading have one too, which is no plant", () => {
  const labelled = { amounts: ["Straw", 4, "lost", 6], planted: ["Plant", "B1-1", "B1-2", "B2-1"] };
  expect(found(perPlant(given(labelled)))).toMatchObject({ setOut: 3, counted: 2 });
  const bare = { amounts: [4, "lost", 6], planted: ["B1-1", "B1-2", "B2-1"] };
  expect(found(perPlant(given(bare)))).toMatchObject({ setOut: 3, counted: 2 });
  const below = { ...given({ amounts: ["Straw", 4, "lost", 6] }), planted: range("planted", bare.planted) };
  const lower = { ...below.planted, corner: { sheet: "Trial", row: 3, column: 1 } };
  expect(found(perPlant({ ...below, planted: lower }))).toMatchObject({ setOut: 3, counted: 2 });
});
