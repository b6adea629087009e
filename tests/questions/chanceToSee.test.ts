import { expect, it } from "vitest";
import { chanceToSee } from "../../src/questions/chanceToSee";
import { codes, found, given } from "./range";

it("keeps what was asked beside both chances", () => {
  const plan = found(chanceToSee(given({ change: "50%", plants_each: 6, unevenness: 0.3, worthwhile: -0.2 })));
  expect(plan).toMatchObject({ change: 0.5, plantsEach: 6, worthwhile: { size: 0.2, lessWanted: true } });
  expect(plan.chanceEnough).toBeLessThan(plan.chanceToSee);
});

it("raises C27, C28 and C29", () => {
  expect(codes(found(chanceToSee(given({ change: 0.2, plants_each: 3 }))).cautions())).toEqual([
    "C27",
    "C28",
    "C29",
    "C12",
  ]);
  expect(codes(found(chanceToSee(given({ change: 1, plants_each: 9, unevenness: 0.2 }))).cautions())).toEqual(["C12"]);
});

it("refuses what the other plans refuse", () => {
  expect(chanceToSee(given({ change: 0.3, plants_each: 1 }))).toMatchObject({ problem: "too-few-each" });
  expect(chanceToSee(given({ change: 0.3, plants_each: 8, beds: 5 }))).toMatchObject({ problem: "not-a-multiple" });
  expect(chanceToSee(given({ plants_each: 8 }))).toEqual({ problem: "missing-argument", argument: "change" });
});
