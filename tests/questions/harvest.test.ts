import { expect, it } from "vitest";
import { readHarvest, valuesOf } from "../../src/questions/harvest";
import { found, range } from "./range";

const rule = { negatives: "refuse", lostPlants: "leave out" } as const;

it("reads a range into its sample and the plants that count", () => {
  const { sample, plants } = found(readHarvest(range("usual", ["Straw", 4, "lost", null, 5]), "usual", rule));
  expect(sample.name).toBe("Straw");
  expect(valuesOf(plants)).toEqual([4, 5]);
  expect(plants.map(({ place }) => place.cell)).toEqual(["B3", "B6"]);
});

it("counts lost plants as zero when told to", () => {
  const { plants } = found(readHarvest(range("usual", [4, "lost"]), "usual", { ...rule, lostPlants: "count as zero" }));
  expect(valuesOf(plants)).toEqual([4, 0]);
});

it("refuses what is not given, what is below zero, and a range without plants", () => {
  expect(readHarvest(null, "usual", rule)).toEqual({ problem: "missing-argument", argument: "usual" });
  expect(readHarvest(range("usual", [4, -1]), "usual", rule)).toMatchObject({ problem: "negative-amount", given: -1 });
  expect(readHarvest(range("usual", ["lost", null]), "usual", rule)).toMatchObject({ problem: "no-usable-plants" });
});
