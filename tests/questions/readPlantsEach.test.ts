import { expect, it } from "vitest";
import { noFreedom, readPlantsEach, spreadOverBeds } from "../../src/questions/readPlantsEach";
import { range } from "./range";

const basis = { unevenness: 0.3, unevennessGiven: true, treatments: 3, beds: 4 };

it("takes whole numbers from 2", () => {
  expect(readPlantsEach(range("plants_each", 2))).toBe(2);
  expect(readPlantsEach(range("plants_each", "12"))).toBe(12);
  for (const few of [1, 0, -3])
    expect(readPlantsEach(range("plants_each", few))).toEqual({ problem: "too-few-each", given: few });
  for (const broken of [7.5, 1.5, 1e17])
    expect(readPlantsEach(range("plants_each", broken))).toMatchObject({ problem: "not-whole", given: broken, low: 2 });
  expect(readPlantsEach(range("plants_each", "six"))).toMatchObject({ problem: "not-a-number" });
  expect(readPlantsEach(null)).toEqual({ problem: "missing-argument", argument: "plants_each" });
});

it("beds must hold as many of each", () => {
  expect(spreadOverBeds(8, basis)).toBeNull();
  expect(spreadOverBeds(9, basis)).toEqual({ problem: "not-a-multiple", plants: 9, beds: 4 });
  for (const beds of [null, "one each"] as const) expect(spreadOverBeds(9, { ...basis, beds })).toBeNull();
});

it("names the layout that leaves nothing to measure luck with", () => {
  expect(noFreedom(2, basis)).toEqual({ problem: "no-freedom", plants: 2, treatments: 3, beds: 4 });
  expect(noFreedom(2, { ...basis, beds: "one each" })).toMatchObject({ beds: 2 });
});
