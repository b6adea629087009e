import { expect, it } from "vitest";
import { gardenPlants } from "../../src/questions/gardenPlants";
import { readLabelled } from "../../src/ranges/readLabelled";
import { found, range } from "./range";

type Cells = Parameters<typeof range>[1];

function garden(amounts: Cells, treatments: Cells | null, beds: Cells | null) {
  const labels = [treatments, beds].map((cells) =>
    cells === null ? null : { range: range("labels", cells), kind: "name" as const },
  );
  return gardenPlants(found(readLabelled(range("amounts", amounts), labels, "keep")));
}

it("numbers treatments and beds as they appear", () => {
  const { plants, leftOut } = garden([4, 5, 6], ["Straw", "Bare", "straw"], ["east", "east", "west"]);
  expect(plants.map(({ value, treatment, treatmentName, bed }) => [value, treatment, treatmentName, bed])).toEqual([
    [4, 0, "Straw", 0],
    [5, 1, "Bare", 0],
    [6, 0, "Straw", 1],
  ]);
  expect(leftOut).toEqual([]);
});

it("takes labels not given as one for all", () => {
  expect(
    garden([4, 5], null, null).plants.map(({ treatment, treatmentName, bed }) => [treatment, treatmentName, bed]),
  ).toEqual([
    [0, null, 0],
    [0, null, 0],
  ]);
});

it("leaves out a plant without treatment or bed, and says where; a row without a plant is not left out", () => {
  const { plants, leftOut } = garden([4, 5, 6, "lost"], ["a", null, "b", null], [1, 1, null, null]);
  expect(plants.map(({ value }) => value)).toEqual([4]);
  expect(leftOut.map(({ cell }) => cell)).toEqual(["B3", "B4"]);
});
