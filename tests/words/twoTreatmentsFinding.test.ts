import { expect, it } from "vitest";
import type { Known } from "../../src/nouns/known";
import { twoTreatmentsFinding } from "../../src/words/twoTreatmentsFinding";
import { group, twoTreatments } from "./records";

const noPercent = { absent: "usual-not-above-zero" } as const;

/** How the averages of two treatments of four plants are set against each other, in grams. */
const averages = (usual: number, tried: number, change: Known) => {
  const text = twoTreatmentsFinding(
    twoTreatments({
      usual: group("usual", { name: "Bare soil", plants: 4, mean: usual, unevenness: 0.2 }),
      tried: group("new", { name: "Straw", plants: 4, mean: tried, unevenness: 0.2 }),
      unit: "g",
      difference: tried - usual,
      differenceRange: { low: -9, high: 9 },
      change,
      changeRange: { low: noPercent, high: noPercent },
      pValue: 0.3,
      verdict: "none",
      swap: null,
    }),
  );
  return text.slice(0, text.indexOf(". ") + 1);
};

it.each([
  [[20, 25, 0.25], "Straw gave 25 g a plant (4 plants) and Bare soil 20 g (4 plants), so 25 % more."],
  [[20, 15, -0.25], "Straw gave 15 g a plant (4 plants) and Bare soil 20 g (4 plants), so 25 % less."],
  [[20, 20, 0], "Straw gave 20 g a plant (4 plants) and Bare soil 20 g (4 plants), so level on average."],
  [[0, 3, noPercent], "Straw gave 3 g a plant (4 plants) and Bare soil 0 g (4 plants), so 3 g more."],
  [[-2, -5, noPercent], "Straw gave −5 g a plant (4 plants) and Bare soil −2 g (4 plants), so 3 g less."],
  [[0, 0, noPercent], "Straw gave 0 g a plant (4 plants) and Bare soil 0 g (4 plants), so level on average."],
] as const)(
  "tells averages of %j by a percent, or by the amount where there is none",
  ([usual, tried, change], text) => {
    expect(averages(usual, tried, change)).toBe(text);
  },
);
