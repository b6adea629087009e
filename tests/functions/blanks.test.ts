import { afterEach, expect, it } from "vitest";
import { at, cell, type Id, matrix, replyOf } from "./call";

const TOLD_APART = Symbol.for("fairbed.blanks");
const memory = globalThis as { [TOLD_APART]?: string };
afterEach(() => {
  delete memory[TOLD_APART];
});

const EMPTY = Symbol("an empty cell");

/** Calls with empty cells, as the sheet holds them. */
const calls: readonly (readonly [Id, readonly unknown[]])[] = [
  ["UPDOWN", [[4, EMPTY, 5, EMPTY], [6, 7, EMPTY, 8], "table"]],
  ["PERPLANT", [[4, EMPTY, 5, "lost", EMPTY], "table", 4]],
  ["PERPLANT", [24, "table", ["B1", EMPTY, "B2", EMPTY]]],
  ["UNEVENNESS", [[4, EMPTY, 5, 7, EMPTY], "table", ["a", "a", EMPTY, "b", EMPTY], ["x", "y", "x", EMPTY, EMPTY]]],
  ["COMPARETWO", [["Bare", 4, EMPTY, 5, 4.5, 6], ["Straw", EMPTY, 7, 8, 9, EMPTY], "table"]],
  ["COMPARETWO", [[4, EMPTY, 5, 4.5, 6, 5], [6, 8, EMPTY, 9, 8, 7.5], "table", "pairs"]],
  ["COMPARETWO", [[4, 5, 4.5], [6, 8, 9], "table", EMPTY, EMPTY, EMPTY, EMPTY]],
  ["PLANTSNEEDED", [0.3, EMPTY, "table", EMPTY, EMPTY, EMPTY, EMPTY, EMPTY]],
  ["SMALLESTCHANGE", [8, EMPTY, EMPTY, EMPTY, EMPTY, EMPTY, EMPTY]],
  ["CHANCETOSEE", [0.3, 8, EMPTY, EMPTY, EMPTY, EMPTY, EMPTY]],
  ["LOOKOVER", [[4, EMPTY, "5 g", 7, EMPTY], "table", EMPTY, EMPTY, EMPTY]],
  ["PLAINNUMBER", [[4, EMPTY, "5 g", EMPTY], EMPTY]],
];

function filled(argument: unknown, blank: unknown): unknown {
  if (argument === EMPTY) return [[blank]];
  return Array.isArray(argument) ? argument.map((value) => (value === EMPTY ? blank : value)) : argument;
}

it.each(calls)('%s: an empty cell may arrive as null, as "" or as the host\'s own Empty', (id, given) => {
  const [byNull, ...others] = [null, "", { type: "Empty", basicValue: 0 }].map((blank) =>
    replyOf(id, ...given.map((argument) => filled(argument, blank))),
  );
  for (const other of others) expect(other).toEqual(byNull);
});

it.each(calls)("%s: an omitted option is an empty cell", (id, given) => {
  const omitted = given.map((argument) => (argument === EMPTY ? null : filled(argument, null)));
  const empty = given.map((argument) => filled(argument, null));
  expect(replyOf(id, ...omitted)).toEqual(replyOf(id, ...empty));
});

const withZeros: readonly (readonly [Id, readonly unknown[]])[] = [
  [
    "UPDOWN",
    [
      [4, 0, 5, 6],
      [6, 7, 0, 8],
    ],
  ],
  ["PERPLANT", [[4, 0, 5, 0]]],
  ["UNEVENNESS", [[4, 0, 5, 0]]],
  [
    "COMPARETWO",
    [
      [4, 0, 5, 6, 5],
      [6, 7, 0, 8, 7],
    ],
  ],
];

it.each(withZeros)("%s: zeros are kept, and doubted until the host is known to tell blanks apart", (id, given) => {
  const doubted = String(cell(id, ...given, "cautions"));
  expect(doubted).toMatch(/2 zeros found\. If those cells are empty, type .lost. or .not weighed./);
  const table = matrix(id, ...given, "table");
  memory[TOLD_APART] = "told apart";
  expect(cell(id, ...given, "cautions")).not.toMatch(/zeros? found/);
  const figures = (block: readonly (readonly unknown[])[]) => block.filter(([label]) => label !== "Cautions");
  expect(figures(matrix(id, ...given, "table"))).toEqual(figures(table));
});

it("a zero is a plant that bore nothing, not a plant missing", () => {
  expect(cell("PERPLANT", [4, 0, 5, 0], "Plants counted")).toBe(4);
  expect(cell("PERPLANT", [4, null, 5, null, 6], "Plants counted")).toBe(3);
});

it("'none' is a zero beyond doubt; without zeros nothing is doubted", () => {
  expect(cell("PERPLANT", [4, "none", 5, "–"], "cautions")).not.toMatch(/zeros? found/);
  expect(cell("PERPLANT", [4, "none", 5, "–"], "Plants counted")).toBe(4);
  expect(cell("PERPLANT", [4, 5], "cautions")).not.toMatch(/zeros? found/);
});

it("the doubt is among the words when nothing weighs more", () => {
  expect(cell("UNEVENNESS", [4, 0, 5, 6], "words")).toMatch(/1 zero found/);
  expect(cell("COMPARETWO", [4, 5, 0, 6], [14, 15, 16, 15], "Cautions")).toMatch(/1 zero found/);
});

it("empty cells at the end of all ranges are not there; those before it are not recorded", () => {
  const padded = (values: readonly unknown[]) => [...values, ...Array(40).fill(null)];
  const [usual, tried] = [
    [4, null, 5, 6],
    [7, 8, 9, null, 9],
  ];
  for (const how of ["separate", "pairs"]) {
    const table = matrix("COMPARETWO", [...usual, null], tried, "table", how);
    expect(matrix("COMPARETWO", padded(usual), padded(tried).slice(0, 44), "table", how)).toEqual(table);
  }
  expect(cell("PERPLANT", padded(usual), "Not recorded")).toBe(1);
  expect(cell("PERPLANT", padded(usual), "Plants set out")).toBe(4);
  const labelled = matrix("UNEVENNESS", padded([4, 5, 6]), "table", padded(["a", "a", "b"]));
  expect(labelled).toEqual(matrix("UNEVENNESS", [4, 5, 6], "table", ["a", "a", "b"]));
});

it("ranges of any shape are read row by row", () => {
  const block = [
    [4, 5],
    [6, 7],
  ];
  expect(cell("UNEVENNESS", at("S!B2:C3", block))).toBe(cell("UNEVENNESS", [4, 5, 6, 7]));
  expect(cell("COMPARETWO", block, [[8, 9, 9, 8]], "p value")).toBe(
    cell("COMPARETWO", [4, 5, 6, 7], [8, 9, 9, 8], "p value"),
  );
  expect(cell("COMPARETWO", [[4, 5, 6, 8]], [[8, 9, 7, 12]], "p value", "pairs")).toBe(
    cell("COMPARETWO", [4, 5, 6, 8], [8, 9, 7, 12], "p value", "pairs"),
  );
});
