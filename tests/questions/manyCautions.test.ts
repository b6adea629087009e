import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { compareMany } from "../../src/questions/compareMany";
import { codes, found, given } from "./range";

type Call = Readonly<Record<string, Cell | readonly Cell[]>>;

const cautionsOf = (call: Call) => found(compareMany(given(call))).cautions();
const fewIn = (call: Call) => cautionsOf(call).filter(({ caution }) => caution === "C01");

/** Two or three treatments in so many beds, one plant of each in a bed. */
function inBeds(beds: number, names: readonly string[]): Call {
  const rows = Array.from({ length: beds }, (_, bed) =>
    names.map((name, at) => ({ name, bed, amount: 10 + 3 * at + ((bed * 7 + at * 5) % 4) })),
  ).flat();
  return {
    amounts: rows.map(({ amount }) => amount),
    treatments: rows.map(({ name }) => name),
    beds: rows.map(({ bed }) => `bed ${bed}`),
    usual: names[0] ?? null,
  };
}

/** Plants of each treatment, none alike. */
function plantsOf(numbers: Readonly<Record<string, number>>): Call {
  const rows = Object.entries(numbers).flatMap(([name, plants]) =>
    Array.from({ length: plants }, (_, at) => ({ name, amount: 10 + at + name.length })),
  );
  return { amounts: rows.map(({ amount }) => amount), treatments: rows.map(({ name }) => name) };
}

it.each([
  [{ a: 4, b: 4, c: 4 }, null, []],
  [{ a: 8, b: 3, c: 5 }, "a", [8, 3]],
  [{ a: 3, b: 5, c: 8 }, "a", [3, 5]],
  [{ a: 3, b: 3, c: 8 }, null, [3, 3]],
  [{ a: 6, b: 3, c: 5 }, null, [3, 5]],
  [{ a: 6, b: 1, c: 5 }, "a", [6, 1]],
] as const)("C01 with separate plants %j, usual %s: %j", (numbers, usual, plants) => {
  const [caution] = fewIn({ ...plantsOf(numbers), usual });
  expect(caution?.caution === "C01" ? caution.plants : []).toEqual(plants);
});

it("C01 in beds counts those that hold both, as the verdict does", () => {
  expect(fewIn(inBeds(3, ["bare", "straw", "chips"]))).toMatchObject([{ plants: [3, 3], pairs: true }]);
  expect(fewIn(inBeds(4, ["bare", "straw", "chips"]))).toEqual([]);
});

it("C01 for two treatments in beds goes by the rule for pairs", () => {
  expect(fewIn(inBeds(5, ["bare", "straw"]))).toMatchObject([{ plants: [5, 5], pairs: true, mostOneSided: 2 / 32 }]);
  expect(fewIn(inBeds(6, ["bare", "straw"]))).toEqual([]);
});

it("C05 where the usual average is 0, though no plant is at 0", () => {
  const treatments = ["a", "a", "a", "a", "b", "b", "b", "b"];
  expect(codes(cautionsOf({ amounts: [-1, 1, -2, 2, 3, 4, 5, 6], treatments, usual: "a" }))).toContain("C05");
});

it("C17 wants plants that are alike: one plant alone is not", () => {
  const treatments = ["a", "a", "a", "a", "b", "b", "b", "b", "c"];
  const lone = { amounts: [4, 5, 6, 5, 7, 8, 9, 8, 3], treatments, how: "own unevenness" };
  expect(found(compareMany(given(lone))).pAllTogether).toEqual({ absent: "one-plant" });
  expect(codes(cautionsOf(lone))).not.toContain("C17");
  const alike = { ...lone, amounts: [4, 5, 6, 5, 7, 7, 7, 7, 3], treatments: [...treatments.slice(0, 8), "a"] };
  expect(codes(cautionsOf(alike))).toContain("C17");
});
