import { expect, it } from "vitest";
import { oddPlaces } from "../../src/questions/oddPlaces";
import { usablePlants } from "../../src/questions/usablePlants";
import { sample } from "./range";

const placesIn = (cells: readonly (number | string)[]) =>
  oddPlaces(usablePlants(sample("usual", cells), "leave out")).map(({ cell }) => cell);

it("finds five times the middle value, counting rows that hold no plant", () => {
  expect(placesIn([4, "lost", 5, 6, 27.5])).toEqual(["B6"]);
  expect(placesIn([4, "lost", 5, 6, 27])).toEqual([]);
});

it("finds nothing among no plants", () => {
  expect(oddPlaces([])).toEqual([]);
});
