import { expect, it } from "vitest";
import type { TwoTreatments } from "../../src/nouns/findings/twoTreatments";
import { twoTreatmentsCompared } from "../../src/words/twoTreatmentsCompared";
import { group, row, twoTreatments } from "./records";

const places = (count: number) => Array.from({ length: count }, (_, at) => row("new", at + 1));

/** What is said was compared, after its first two sentences. */
const leftOut = (
  lost: number,
  notRecorded: number,
  facts: Partial<Pick<TwoTreatments, "lostPlants" | "pairs" | "asked">>,
) =>
  twoTreatmentsCompared(
    twoTreatments({
      usual: group("usual", { name: "Bare soil", plants: 8, mean: 4, unevenness: 0.2 }),
      tried: group("new", {
        name: "Straw",
        plants: 8,
        mean: 5,
        unevenness: 0.2,
        lost: places(lost),
        notRecorded: places(notRecorded),
      }),
      difference: 1,
      differenceRange: { low: -1, high: 3 },
      change: 0.25,
      changeRange: { low: -0.2, high: 0.8 },
      pValue: 0.3,
      verdict: "open",
      swap: null,
      ...facts,
    }),
  ).replace(/^.*?\. Each plant counts once\. ?/, "");

it("says how many lost plants are left out or count as 0, one or several", () => {
  expect(leftOut(1, 0, {})).toBe("1 lost plant is left out.");
  expect(leftOut(2, 0, {})).toBe("2 lost plants are left out.");
  expect(leftOut(1, 0, { lostPlants: "count as zero" })).toBe("The 1 lost plant counts as 0.");
  expect(leftOut(2, 0, { lostPlants: "count as zero" })).toBe("The 2 lost plants count as 0.");
});

it("says how many plants were not recorded", () => {
  expect(leftOut(0, 1, {})).toBe("1 plant was not recorded and is left out.");
  expect(leftOut(0, 3, {})).toBe("3 plants were not recorded and are left out.");
});

it("says how many pairs or beds have a number missing", () => {
  const pairs = (incomplete: number) => ({ complete: 8, incomplete });
  expect(leftOut(0, 0, { pairs: pairs(1), asked: "beds" })).toBe("1 bed with a number missing is left out.");
  expect(leftOut(0, 0, { pairs: pairs(2), asked: "pairs" })).toBe("2 pairs with a number missing are left out.");
  expect(leftOut(0, 0, { pairs: pairs(0), asked: "pairs" })).toBe("");
});
