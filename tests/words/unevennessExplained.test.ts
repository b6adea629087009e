import { describe, expect, it } from "vitest";
import type { Place } from "../../src/nouns/place";
import { explainUnevenness } from "../../src/words/unevennessExplained";
import { oneUnevenness, unevenness } from "./records";

const all = oneUnevenness({ plants: 12, unevenness: 0.25, range: { low: 0.2, high: 0.4 } });
const [straw, bare] = [
  oneUnevenness({ name: "Straw", plants: 6, unevenness: 0.2 }),
  oneUnevenness({ name: "Bare soil", plants: 5, unevenness: { absent: "average-zero" } }),
];

function rows(count: number): readonly Place[] {
  return Array.from({ length: count }, (_, at) => ({
    argument: "amounts",
    row: at + 2,
    column: null,
    cell: `B${at + 2}`,
  }));
}

describe("what was compared", () => {
  it.each([
    [[straw], false, "12 plants of Straw, all treated alike."],
    [[straw], true, "12 plants of Straw, all treated alike. Differences between beds are taken out."],
    [[straw, bare], false, "12 plants in 2 treatments. Differences between treatments are taken out."],
    [[straw, bare], true, "12 plants in 2 treatments. Differences between treatments and beds are taken out."],
    [[oneUnevenness({ plants: 12, unevenness: 0.25 })], false, "12 plants, all treated alike."],
  ])("case %#", (treatments, withinBeds, expected) => {
    expect(explainUnevenness(unevenness({ all, treatments, withinBeds })).compared).toBe(expected);
  });

  it("one plant is treated like no other", () => {
    const one = oneUnevenness({ plants: 1, unevenness: { absent: "one-plant-only" } });
    expect(explainUnevenness(unevenness({ all: one, treatments: [one] })).compared).toBe("1 plant.");
  });
});

it("tells each of several treatments, one without a name by its number", () => {
  const nameless = oneUnevenness({ plants: 1, unevenness: 0.3 });
  const { workings } = explainUnevenness(unevenness({ all, treatments: [straw, nameless] }));
  expect(workings[1]).toBe("Straw: 20 % (6 plants); treatment 2: 30 % (1 plant).");
});

it("says why a treatment has no figure", () => {
  const { workings } = explainUnevenness(unevenness({ all, treatments: [straw, bare] }));
  expect(workings[1]).toBe("Straw: 20 % (6 plants); Bare soil: average is 0 (5 plants).");
});

it("tells nothing of each where there is one treatment only", () => {
  expect(explainUnevenness(unevenness({ all, treatments: [straw] })).workings).toHaveLength(1);
});

it.each([
  [1, "1 row without a treatment or bed left out (B2)."],
  [5, "5 rows without a treatment or bed left out (B2, B3, B4, B5 and B6)."],
  [6, "6 rows without a treatment or bed left out."],
])("names up to five rows left out: %d", (count, expected) => {
  const { workings } = explainUnevenness(unevenness({ all, treatments: [straw], leftOut: rows(count) }));
  expect(workings.at(-1)).toBe(expected);
});
