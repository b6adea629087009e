import { expect, it } from "vitest";
import { plantOf, usablePlants } from "../../src/questions/usablePlants";
import { sample } from "./range";

const entries = sample("usual", [4, "lost", "n/a", 0, "none"]);

it("counts values and zeros in sheet order, and leaves lost plants out", () => {
  expect(usablePlants(entries, "leave out").map(({ value }) => value)).toEqual([4, 0, 0]);
});

it("counts a lost plant as zero when told to, never one not recorded", () => {
  const plants = usablePlants(entries, "count as zero");
  expect(plants.map(({ value, place }) => [value, place.row])).toEqual([
    [4, 1],
    [0, 2],
    [0, 4],
    [0, 5],
  ]);
});

it("gives null for an entry that is no plant", () => {
  const [, lost, unknown] = entries.entries;
  if (lost === undefined || unknown === undefined) throw new Error("three entries");
  expect(plantOf(lost, "leave out")).toBeNull();
  expect(plantOf(unknown, "count as zero")).toBeNull();
});
