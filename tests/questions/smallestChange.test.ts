import { expect, it } from "vitest";
import { smallestChange } from "../../src/questions/smallestChange";
import { codes, found, given } from "./range";

it("has its defaults: 80 %, more", () => {
  const plan = found(smallestChange(given({ plants_each: 8, unevenness: 0.3 })));
  expect(plan).toMatchObject({ plantsEach: 8, chance: 0.8, direction: "more", treatments: 2, beds: null });
  expect(codes(plan.cautions())).toEqual(["C12"]);
});

it("raises C27 and C28", () => {
  expect(codes(found(smallestChange(given({ plants_each: 3 }))).cautions())).toEqual(["C27", "C28", "C12"]);
});

it("refuses a word that is no direction, and beds that do not hold as many of each", () => {
  expect(smallestChange(given({ plants_each: 8, direction: "up" }))).toMatchObject({ problem: "unknown-choice" });
  expect(smallestChange(given({ plants_each: 8, beds: 3 }))).toMatchObject({ problem: "not-a-multiple" });
});
