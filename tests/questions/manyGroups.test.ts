import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import type { LostPlants } from "../../src/nouns/lostPlants";
import { manyGroups } from "../../src/questions/manyGroups";
import { readLabelled } from "../../src/ranges/readLabelled";
import { found, range } from "./range";

type Cells = readonly Cell[];

function groups(amounts: Cells, treatments: Cells, beds: Cells | null, rule: LostPlants = "leave out") {
  const labels = [treatments, beds].map((cells) => cells && { range: range("labels", cells), kind: "name" as const });
  return manyGroups(found(readLabelled(range("amounts", amounts), labels, "keep")), rule);
}

const cellsOf = (rows: readonly { readonly place: { readonly cell: string | null } }[]) =>
  rows.map(({ place }) => place.cell);

it("numbers treatments and beds as they appear, and keeps how they were first spelt", () => {
  const { names, beds, plants } = groups([4, 5, 6], ["Straw", "Bare", "straw"], ["east", "west", "East"]);
  expect([names, beds]).toEqual([
    ["Straw", "Bare"],
    ["east", "west"],
  ]);
  expect(plants.map(({ value, treatment, bed }) => [value, treatment, bed])).toEqual([
    [4, 0, 0],
    [5, 1, 1],
    [6, 0, 0],
  ]);
});

it("tells lost plants from those not recorded, each with its treatment", () => {
  const { plants, lost, notRecorded } = groups([4, "lost", "?", 6, null], ["a", "b", "b", "b", "a"], null);
  expect(cellsOf(plants)).toEqual(["B2", "B5"]);
  expect(lost).toMatchObject([{ treatment: 1, place: { cell: "B3" } }]);
  expect(notRecorded).toMatchObject([
    { treatment: 1, place: { cell: "B4" } },
    { treatment: 0, place: { cell: "B6" } },
  ]);
});

it("a lost plant counted as zero is a plant, and lost all the same", () => {
  const { plants, lost } = groups([4, "lost"], ["a", "b"], null, "count as zero");
  expect(plants.map(({ value }) => value)).toEqual([4, 0]);
  expect(cellsOf(lost)).toEqual(["B3"]);
});

it("a row without a treatment, or without a bed where there are beds, is left out and listed", () => {
  const { plants, leftOut } = groups([4, 5, 6, "lost"], ["a", null, "b", null], ["east", "east", null, "west"]);
  expect(cellsOf(plants)).toEqual(["B2"]);
  expect(leftOut.map(({ cell }) => cell)).toEqual(["B3", "B4", "B5"]);
});

it("a row that is empty but for one label is not listed", () => {
  const { leftOut, notRecorded } = groups([4, null, 5], ["a", null, "b"], ["east", "east", "east"]);
  expect([leftOut, notRecorded]).toEqual([[], []]);
});
