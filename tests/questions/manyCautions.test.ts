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
  [{ a: 8, b: 3, c: 2 }, "a", [8, 2]],
  [{ a: 8, b: 2, c: 3 }, null, [2, 3]],
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

/** Treatments given one after the other, the first of them the usual. */
function groups(named: Readonly<Record<string, readonly Cell[]>>, more: Call = {}): Call {
  const treatments = Object.entries(named).flatMap(([name, amounts]) => amounts.map(() => name));
  return { amounts: Object.values(named).flat(), treatments, usual: Object.keys(named)[0] ?? null, ...more };
}

const bare = [20, 21, 23, 22];
const straw = [21, 23, 22, 24];

it.each<readonly [string, Call, due: readonly string[]]>([
  ["plants alike enough", groups({ bare, straw }), []],
  ["no usual named", groups({ bare, straw }, { usual: null }), []],
  ["a plant far from the rest", groups({ bare, straw: [...straw, 150] }), ["C06"]],
  ["a number behind a mark", groups({ bare, straw: ["~21", 23, 22, 24] }), ["C14"]],
  ["no plant of the usual left", groups({ bare: ["lost", "lost"], straw }), ["C03", "C04"]],
  // one plant is a weak base; without it there would be nothing to compare with
  ["one plant of the usual", groups({ bare: [10], straw: [30, 31, 32, 33, 34] }), ["C01"]],
])("%s: %j raises %j, and C12", (_, call, due) => {
  expect(codes(cautionsOf(call))).toEqual([...due, "C12"]);
});

// of four bare one is lost, of six straw one is lost and one not recorded
const someLost = { bare: [20, 21, "lost", 22], straw: [21, "lost", "?", 24, 22, 23] };
const fewLost = { bare: [...bare, ...straw, "lost"], straw: [...bare, "lost", "?"] };

it.each([
  ["leave out", someLost, [1, 4], true],
  ["count as zero", someLost, [1, 4], true],
  ["leave out", fewLost, [1, 9], false],
  ["count as zero", fewLost, [1, 9], false],
] as const)("C03, lost plants %s: %j, of the usual %j lost and set out", (rule, named, [lost, setOut], strong) => {
  const cautions = cautionsOf(groups({ ...named, chips: straw }, { lost_plants: rule }));
  const caution = cautions.find((one) => one.caution === "C03");
  const none = { absent: "no-usable-plants" };
  const countedAsZero = rule === "count as zero";
  expect(caution).toMatchObject({ change: none, changeLostAsZero: none, strong, countedAsZero });
  expect(Object.fromEntries((caution?.losses ?? []).map((loss) => [loss.name, loss]))).toEqual({
    bare: { name: "bare", role: "usual", lost, setOut },
    straw: { name: "straw", role: "new", lost: 1, setOut: 6 },
  });
});

// R, uniroot() with one spread for both: 71 % more, from 4.6 % (under a fifteenth of 71 %) to 228 %; METHODS 9.2
it("C30 where a wide range all but holds no change", () => {
  const barely = groups({ bare: [20, 19, 9, 28, 9, 18], straw: [18, 38, 20, 27, 30, 43] });
  expect(codes(cautionsOf(barely))).toContain("C30");
  expect(codes(cautionsOf({ ...barely, usual: null }))).not.toContain("C30");
});

// R, Dunnett's integral: p .030 for straw; .41 without its plant of 13.5, at most .05 without any other; chips stay under 1e-6
it("C21 where one of two verdicts hangs on a plant", () => {
  const fragile = groups({ bare: [9, 10, 11, 9, 10, 11], straw: [11.1, 13.5], chips: [20, 21, 20.5, 21.5] });
  expect(cautionsOf(fragile)).toContainEqual({ caution: "C21", place: expect.objectContaining({ row: 8 }) });
});
