import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { readAllPlants } from "../../src/ranges/readAllPlants";
import { found } from "../questions/range";

const log = { plants: "Courgette", keys: new Set(["b1-1", "a"]) };

function list(...rows: readonly (readonly Cell[])[]) {
  return readAllPlants({ argument: "all_plants", cells: rows, corner: null, zerosVerified: true }, log);
}
const plants = (...labels: readonly Cell[]) =>
  found(list(...labels.map((label) => [label]))).plants.map(({ plant }) => plant);

it("a first row is a heading by its word, by the log's own, or without a digit where all others have one", () => {
  expect(plants("Plant", "B1-1", "X")).toEqual(["B1-1", "X"]);
  expect(plants("courgette", "B1-1", "X")).toEqual(["B1-1", "X"]);
  expect(plants("Stake", "B1-1", "B1-2")).toEqual(["B1-1", "B1-2"]);
  expect(plants("X", "Y", "Z")).toEqual(["X", "Y", "Z"]);
  expect(plants("A", "B1", "B2")).toEqual(["A", "B1", "B2"]);
});

it("treatment and bed where they stand; empty rows and repeats do not count twice", () => {
  const read = found(list(["B1-1", "Straw", 1], [null, null, null], ["b1 - 1", "Bare", 2], ["B1-2", null, null]));
  expect(read).toEqual({
    plants: [
      { plant: "B1-1", treatment: "Straw", bed: "1" },
      { plant: "B1-2", treatment: null, bed: null },
    ],
    withTreatments: true,
    repeated: true,
  });
});

it("four columns are too many", () => {
  expect(list([1, 2, 3, 4])).toEqual({ problem: "too-many-columns", argument: "all_plants", columns: 4, most: 3 });
});
