import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { type LogHeadings, readAllPlants } from "../../src/ranges/readAllPlants";
import { found } from "../questions/range";

const log = { plants: "Courgette", keys: new Set(["b1-1", "a"]) };

function list(rows: readonly (readonly Cell[])[], headings: LogHeadings = log) {
  return readAllPlants({ argument: "all_plants", cells: rows, corner: null, zerosVerified: true }, headings);
}
const plantsBeside = (headings: LogHeadings, ...labels: readonly Cell[]) =>
  found(
    list(
      labels.map((label) => [label]),
      headings,
    ),
  ).plants.map(({ plant }) => plant);
const plants = (...labels: readonly Cell[]) => plantsBeside(log, ...labels);

it("a first row is a heading by its word, by the log's own, or without a digit where all others have one", () => {
  expect(plants("Plant", "B1-1", "X")).toEqual(["B1-1", "X"]);
  expect(plants("courgette", "B1-1", "X")).toEqual(["B1-1", "X"]);
  expect(plants("Stake", "B1-1", "B1-2")).toEqual(["B1-1", "B1-2"]);
  expect(plants("X", "Y", "Z")).toEqual(["X", "Y", "Z"]);
  expect(plants("Stake", null, "B1-1", "B1-2")).toEqual(["B1-1", "B1-2"]);
  expect(plants("A", "B1", "B2")).toEqual(["A", "B1", "B2"]);
});

it.each(["Plants", "Label", "Plant label", "Name", "Unit", "Bag", "ID", "All plants"])(
  "%s is a heading above plants without a digit",
  (word) => {
    expect(plants(word, "X", "Y")).toEqual(["X", "Y"]);
  },
);

it("a first row is no heading where it may be a plant", () => {
  expect(plants("C1", "C2", "C3")).toEqual(["C1", "C2", "C3"]);
  expect(plants("X", "Y", "Z1")).toEqual(["X", "Y", "Z1"]);
  expect(plants("Rosemary")).toEqual(["Rosemary"]);
  expect(plants("Plant", "plant", "X")).toEqual(["Plant", "X"]);
  expect(plants(null, null)).toEqual([]);
});

it("spaces round - _ and / do not tell the list's plants and heading from the log's", () => {
  const headings = { plants: "Row / no.", keys: new Set(["a-b"]) };
  expect(plantsBeside(headings, "row/no.", "X", "Y")).toEqual(["X", "Y"]);
  expect(plantsBeside(headings, "A - b", "B1", "B2")).toEqual(["A - b", "B1", "B2"]);
  expect(plantsBeside({ ...headings, plants: null }, "X", "Y")).toEqual(["X", "Y"]);
});

it("treatment and bed where they stand; empty rows and repeats do not count twice", () => {
  const read = found(
    list([
      ["B1-1", "Straw", 1],
      [null, null, null],
      ["b1 - 1", "Bare", 2],
      ["B1-2", null, null],
    ]),
  );
  expect(read).toEqual({
    plants: [
      { plant: "B1-1", treatment: "Straw", bed: "1" },
      { plant: "B1-2", treatment: null, bed: null },
    ],
    withTreatments: true,
    repeated: true,
  });
});

it("plants alone have no treatments; none repeated", () => {
  const nothing = { treatment: null, bed: null };
  expect(list([["X"], ["Y"]])).toEqual({
    plants: [
      { plant: "X", ...nothing },
      { plant: "Y", ...nothing },
    ],
    withTreatments: false,
    repeated: false,
  });
});

it("treatments and beds are told apart by the rules of names, not of plants; the heading row is none", () => {
  const rows = [
    ["Plant", "Mulch", "Bed"],
    ["B1", "Hay/straw", "North-1"],
    ["B2", "hay / straw", "north - 1"],
    ["B3", " HAY/straw ", "NORTH-1"],
  ];
  const { plants: listed, withTreatments } = found(list(rows));
  expect(listed.map(({ plant }) => plant)).toEqual(["B1", "B2", "B3"]);
  expect(listed.map(({ treatment }) => treatment)).toEqual(["Hay/straw", "hay / straw", "Hay/straw"]);
  expect(listed.map(({ bed }) => bed)).toEqual(["North-1", "north - 1", "North-1"]);
  expect(withTreatments).toBe(true);
});

it("four columns are too many", () => {
  expect(list([[1, 2, 3, 4]])).toEqual({ problem: "too-many-columns", argument: "all_plants", columns: 4, most: 3 });
});
