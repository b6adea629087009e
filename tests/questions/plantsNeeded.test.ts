import { expect, it } from "vitest";
import { plantsNeeded } from "../../src/questions/plantsNeeded";
import { codes, found, given } from "./range";

it("has its defaults: 80 %, 10 % lost, worthwhile 10 %", () => {
  const plan = found(plantsNeeded(given({ change: 0.3, unevenness: 0.25 })));
  expect(plan).toMatchObject({
    change: 0.3,
    chance: 0.8,
    losses: 0.1,
    worthwhile: { size: 0.1, given: false },
    treatments: 2,
    beds: null,
  });
});

it("what is not practical is said in every figure", () => {
  const plan = found(plantsNeeded(given({ change: 0.03, unevenness: 0.4 })));
  const absent = { absent: "not-practical" };
  expect(plan).toMatchObject({ needed: absent, setOut: absent, inAll: absent });
  for (const figure of [plan.chanceToSee, plan.chanceEnough, plan.smallestWithHalf]) expect(figure()).toEqual(absent);
  expect(codes(plan.cautions())).toEqual(["C12"]);
});

it("no change needs no trial", () => {
  expect(plantsNeeded(given({ change: 0 }))).toEqual({ problem: "no-change" });
  expect(plantsNeeded(given({ change: -1 }))).toMatchObject({ problem: "fall-too-big" });
  expect(plantsNeeded({})).toEqual({ problem: "missing-argument", argument: "change" });
});
