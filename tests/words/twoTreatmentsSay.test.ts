import { expect, it } from "vitest";
import type { Verdict } from "../../src/nouns/verdict";
import { twoTreatmentsSay } from "../../src/words/twoTreatmentsSay";
import { group, twoTreatments } from "./records";

/** What may be said of straw against bare soil, where so many plants of each count. */
const said = (verdict: Verdict, change: number, [usual, tried]: readonly [number, number] = [8, 8]) =>
  twoTreatmentsSay(
    twoTreatments({
      usual: group("usual", { name: "Bare soil", plants: usual, mean: 4, unevenness: 0.2 }),
      tried: group("new", { name: "Straw", plants: tried, mean: 4 * (1 + change), unevenness: 0.2 }),
      difference: 4 * change,
      differenceRange: { low: -1, high: 3 },
      change,
      changeRange: { low: change - 0.2, high: change + 0.2 },
      pValue: 0.03,
      verdict,
      swap: null,
    }),
  );

it.each([
  ["up-enough", 0.0001, "Here, Straw gave hardly more per plant than Bare soil (8 plants each)."],
  ["down-enough", -0.0001, "Here, Straw gave hardly less per plant than Bare soil (8 plants each)."],
] as const)("%s by less than is shown keeps its direction", (verdict, change, sentence) => {
  expect(said(verdict, change)).toContain(sentence);
});

it("counts the plants of both where they are not as many, the new first as in the sentence", () => {
  expect(said("up-enough", 0.4, [8, 7])).toContain(
    "Here, Straw gave 40 % more per plant than Bare soil (7 plants and 8).",
  );
});

it("says that too few plants gave as much, or how much less", () => {
  expect(said("few", 0, [2, 2])).toBe(
    "We got 8 from 2 plants of Straw and 8 from 2 of Bare soil. Per plant that is level, but 2 plants each cannot settle it.",
  );
  expect(said("few", -1, [2, 2])).toContain("Per plant that is 100 % less, but 2 plants each cannot settle it.");
});
