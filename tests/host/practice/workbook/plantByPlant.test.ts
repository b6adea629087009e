import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { plantByPlant } from "../../../../src/host/practice/workbook/plantByPlant";

/** The trial as R reads it for the tests of the methods: plant, mulch, bed, grams. */
const published = readFileSync("tests/reference/demoPlants.csv", "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => line.split(","))
  .toSorted(([one = ""], [other = ""]) => one.localeCompare(other));

function row(at: number): readonly unknown[] {
  return ["A", "C", "B", "D"].map((column) => plantByPlant.cells[`${column}${at}`]?.v);
}

it("heads plant, bed, mulch and grams", () => {
  expect(row(1)).toEqual(["Plant", "Mulch", "Bed", "Grams"]);
});

it.each(published.map((plant, at) => [at + 2, ...plant] as const))(
  "row %i is plant %s: %s, bed %s, %s g",
  (...line) => {
    const [at, plant, mulch, bed, grams] = line;
    const amount = grams === "NA" ? expect.stringMatching(/^lost \(/) : Number(grams);
    expect(row(at)).toEqual([plant, mulch, Number(bed), amount]);
  },
);

it("ends with the last plant", () => {
  expect(published).toHaveLength(32);
  expect(row(34)).toEqual([undefined, undefined, undefined, undefined]);
});
