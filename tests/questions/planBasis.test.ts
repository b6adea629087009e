import { expect, it } from "vitest";
import { planCautions, readPlanBasis } from "../../src/questions/planBasis";
import { codes, given } from "./range";

const basis = { unevenness: 0.3, unevennessGiven: true, treatments: 2, beds: null };

it("has its defaults: 35 %, not given; two treatments; separate plants", () => {
  expect(readPlanBasis({})).toEqual({ unevenness: 0.35, unevennessGiven: false, treatments: 2, beds: null });
});

it("takes what is typed", () => {
  const typed = given({ unevenness: "25%", treatments: 4, beds: "one each" });
  expect(readPlanBasis(typed)).toEqual({ unevenness: 0.25, unevennessGiven: true, treatments: 4, beds: "one each" });
});

it("refuses too few and too many treatments", () => {
  for (const treatments of [1, 21, 2.5])
    expect(readPlanBasis(given({ treatments }))).toMatchObject({ problem: "not-whole" });
});

it.each([
  [basis, 4, 0.5, ["C12"]],
  [{ ...basis, unevennessGiven: false }, 4, 0.5, ["C27", "C12"]],
  [basis, 3, 0.5, ["C28", "C12"]],
  [basis, 4, 0.49, ["C29", "C12"]],
  [basis, null, null, ["C12"]],
])("C27, C28 and C29 each where due: case %#", (plan, plants, chance, due) => {
  expect(codes(planCautions(plan, plants, chance))).toEqual(due);
});
