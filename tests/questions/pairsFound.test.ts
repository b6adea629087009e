import { expect, it } from "vitest";
import { lettersFor, pairsFound } from "../../src/questions/pairsFound";
import { columnsOf, joint, trialOf } from "./trialOf";

/** Treatments of four plants each, a, b, c … by their averages, one plant below them by 1 and one above; null: none. */
const trial = (...averages: readonly (number | null)[]) => {
  const plants = averages.map((mean) => (mean === null ? [] : [mean - 1, mean, mean, mean + 1]));
  const groups = trialOf(columnsOf(plants));
  return { groups, compared: joint(groups, { how: "all pairs", usual: null }) };
};

it.each<[readonly (number | null)[], readonly (readonly [higher: string, lower: string, difference: number])[]]>([
  [
    [10, 12, 20],
    [
      ["c", "a", 10],
      ["c", "b", 8],
      ["b", "a", 2],
    ],
  ],
  [
    [20, 11, 12],
    [
      ["a", "b", 9],
      ["a", "c", 8],
      ["c", "b", 1],
    ],
  ],
  [
    [30, 28, 10, 17],
    [
      ["a", "c", 20],
      ["b", "c", 18],
      ["a", "d", 13],
      ["b", "d", 11],
      ["d", "c", 7],
      ["a", "b", 2],
    ],
  ],
  // a treatment without plants has its name, but no pair
  [[null, 10, 15], [["c", "b", 5]]],
])("averages %j: the biggest difference first, the higher of each pair first", (averages, pairs) => {
  const { groups, compared } = trial(...averages);
  expect(pairsFound(groups, compared).map(({ higher, lower, difference }) => [higher, lower, difference])).toEqual(
    pairs,
  );
});

// the plants stray by √(2/3) = 0.8: averages of four that lie 10 apart surely differ, those 0.1 apart do not
it.each<[readonly (number | null)[], Readonly<Record<number, string>>]>([
  [[10, 20, 20.1], { 0: "b", 1: "a", 2: "a" }],
  [[30, 10, 20], { 0: "a", 1: "c", 2: "b" }],
  [[null, 10, 20], { 1: "b", 2: "a" }],
])("averages %j: letters by the treatments' numbers, a for the highest", (averages, letters) => {
  expect(Object.fromEntries(lettersFor(trial(...averages).compared))).toEqual(letters);
});
