import { describe, expect, it } from "vitest";
import type { CellRange } from "../../src/nouns/cellRange";
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

it.each([{}, { amounts: null }])("asks for the amounts: %j", (call) => {
  expect(perPlant(call)).toEqual({ problem: "missing-argument", argument: "amounts" });
});

it("a single cell is a season's total only when it holds an amount and several plants were set out", () => {
  expect(found(perPlant(given({ amounts: 12, planted: 4 })))).toMatchObject({ fromTotal: true, perPlant: 3 });
  expect(found(perPlant(given({ amounts: 12, planted: 1 })))).toMatchObject({ fromTotal: false, perPlant: 12 });
  expect(found(perPlant(given({ amounts: 12 })))).toMatchObject({ fromTotal: false, setOut: 1, perPlant: 12 });
  expect(perPlant(given({ amounts: "lost", planted: 4 }))).toEqual({
    problem: "numbers-for-planted",
    numbers: 1,
    planted: 4,
  });
});

describe("whether labels have a heading as the amounts do", () => {
  const labels = ["B1-1", "B1-2", "B2-1"];
  const columns = given({ amounts: ["Straw", 4, "lost", 6], tall: ["Plant", ...labels], bare: labels });
  const { amounts, tall, bare } = { amounts: null, tall: null, bare: null, ...columns };
  const nowhere = (block: CellRange | null) => (block === null ? null : { ...block, corner: null });
  const plants = { setOut: 3, lost: 1, counted: 2 };

  it.each([
    ["neither address is known", nowhere(amounts), nowhere],
    ["the amounts' address is not known", nowhere(amounts), (block: CellRange | null) => block],
    ["the labels' address is not known", amounts, nowhere],
  ])("goes by their heights where %s", (_, numbers, as) => {
    expect(found(perPlant({ amounts: numbers, planted: as(tall) }))).toMatchObject(plants);
    expect(found(perPlant({ amounts: numbers, planted: as(bare) }))).toMatchObject(plants);
  });

  it("goes by where they start, however far down the range of labels was drawn", () => {
    const longer = range("planted", ["Plant", ...labels, null, null]);
    expect(found(perPlant({ amounts, planted: longer }))).toMatchObject(plants);
  });
});
