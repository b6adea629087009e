import { expect, it } from "vitest";
import { luckyLead } from "../../src/numerics/luckyLead";
import { near } from "../near";
import reference from "../reference/luckyLead.json";

it.each(reference.cases.chances)(
  "$each plants a team, uneven by $unevenness, a lead of $lead: R's integral",
  ({ each, unevenness, lead, chance }) => {
    // R's integrate holds 1e-12 of the area; a chance near 0 keeps fewer digits of its own.
    near("chance", luckyLead({ each, unevenness }, lead), chance, { relative: 1e-10, absolute: 1e-13 });
  },
);

it("comes up as often in R's 200 000 trials, within four standard errors", () => {
  const share = reference.cases.shareOfTrials;
  const chance = luckyLead({ each: 4, unevenness: 0.25 }, 0.3);
  expect(Math.abs(chance - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / 200_000));
});

it("one plant a team: the double of R's pnorm(-0.3 / (0.1 * sqrt(1 + 1.3^2)))", () => {
  near("chance", luckyLead({ each: 1, unevenness: 0.1 }, 0.3), 0.067379793876824939, { relative: 1e-13 });
});

it("any lead at all is certain, and more plants or more even ones make a lead rarer", () => {
  expect(luckyLead({ each: 4, unevenness: 0.25 }, 0)).toBe(1);
  expect(luckyLead({ each: 8, unevenness: 0.25 }, 0.3)).toBeLessThan(luckyLead({ each: 4, unevenness: 0.25 }, 0.3));
  expect(luckyLead({ each: 4, unevenness: 0.2 }, 0.3)).toBeLessThan(luckyLead({ each: 4, unevenness: 0.25 }, 0.3));
});

it.each([
  [0, 0.25, 0.3],
  [4, 0, 0.3],
  [4, 0.25, -0.1],
  [Number.NaN, 0.25, 0.3],
  [4, 0.25, Number.NaN],
])("%d plants, uneven by %d, a lead of %d are outside the domain", (each, unevenness, lead) => {
  expect(luckyLead({ each, unevenness }, lead)).toBeNaN();
});
