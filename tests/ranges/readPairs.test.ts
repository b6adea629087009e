import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";
import { isProblem } from "../../src/nouns/problem";
import type { Sample } from "../../src/nouns/sample";
import { readPairs } from "../../src/ranges/readPairs";
import { anyCell } from "./anyCell";
import { block, column } from "./column";

const beside = (cells: readonly Cell[], row = 1): CellRange =>
  column(cells, { argument: "new", corner: { sheet: "Beds", row, column: 5 } });

function pairsOf(usual: CellRange, tried: CellRange): readonly [unknown[], unknown[]] {
  const pairs = readPairs(usual, tried, "refuse");
  if (isProblem(pairs)) throw new Error(pairs.problem);
  return [said(pairs.usual), said(pairs.tried)];
}

function said({ entries }: Sample): unknown[] {
  return entries.map((entry) => (entry.kind === "value" ? entry.value : entry.kind === "lost" ? "lost" : entry.why));
}

describe("readPairs keeps row i of both together", () => {
  it("with a cell empty in one of them, in between and at the end", () => {
    const [usual, tried] = pairsOf(column([1, null, 3, null, null]), beside([4, 5, "lost", 6, null]));
    expect(usual).toEqual([1, "empty", 3, "empty"]);
    expect(tried).toEqual([4, 5, "lost", 6]);
  });

  it("under a heading in both", () => {
    const pairs = readPairs(column(["Bare", 1, 2]), beside(["Straw", 3, 4]), "refuse");
    expect(pairs).toMatchObject({ usual: { name: "Bare" }, tried: { name: "Straw" } });
    expect(pairsOf(column(["Bare", 1, 2]), beside(["Straw", 3, 4]))).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });

  it("under a heading that is filled in just one", () => {
    expect(pairsOf(column(["Bare", 1, 2]), beside([null, 3, 4]))).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });

  it("cell by cell in blocks, whose last row is filled in part", () => {
    const tried = block(
      [
        [5, 6],
        [7, null],
      ],
      { argument: "new" },
    );
    expect(
      pairsOf(
        block([
          [1, 2],
          [3, null],
        ]),
        tried,
      ),
    ).toEqual([
      [1, 2, 3],
      [5, 6, 7],
    ]);
  });

  it("when B2:B1000 stands beside a range that ends with the plants", () => {
    const long = [1, 2, ...Array.from({ length: 997 }, () => null)];
    expect(pairsOf(column(long), beside([3, 4]))).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });
});

describe("readPairs with a text in just one of the first cells", () => {
  it("takes it for a note about that plant when the ranges start side by side", () => {
    expect(pairsOf(column(["slugs", 1, 2]), beside([3, 4, 5]))).toEqual([
      ["text", 1, 2],
      [3, 4, 5],
    ]);
    const usual = block([["slugs", 1]], { corner: { sheet: "Beds", row: 1, column: 2 } });
    const tried = block([[3, 4]], { corner: { sheet: "Beds", row: 2, column: 2 } });
    expect(pairsOf(usual, tried)).toEqual([
      ["text", 1],
      [3, 4],
    ]);
  });

  it("refuses ranges that start a row apart, counting the rows without the heading", () => {
    expect(readPairs(column(["Bare", 1, 2]), beside([3, 4, 5], 2), "refuse")).toEqual({
      problem: "shapes-differ",
      first: { argument: "usual", rows: 2, columns: 1 },
      second: { argument: "new", rows: 3, columns: 1 },
    });
  });

  it("refuses when nobody knows where the ranges start", () => {
    const usual = block([["Bare", 1, 2]], { corner: null });
    const tried = block([[3, 4, 5]], { corner: null, argument: "new" });
    expect(readPairs(usual, tried, "refuse")).toMatchObject({
      first: { rows: 1, columns: 2 },
      second: { rows: 1, columns: 3 },
    });
  });

  it("refuses when nobody knows where one of them starts", () => {
    const [known, unknown] = [column(["Bare", 1]), column([3, 4], { argument: "new", corner: null })];
    expect(readPairs(known, unknown, "refuse")).toMatchObject({ problem: "shapes-differ", second: { rows: 2 } });
    expect(readPairs(unknown, known, "refuse")).toMatchObject({ problem: "shapes-differ", first: { rows: 2 } });
  });

  it("refuses ranges that start in one row of two sheets", () => {
    const elsewhere = column([3, 4], { argument: "new", corner: { sheet: "Beds 2", row: 1, column: 5 } });
    expect(readPairs(column(["Bare", 1]), elsewhere, "refuse")).toMatchObject({ problem: "shapes-differ" });
  });

  it("refuses rows that start a column apart, and takes single cells and blocks side by side for a note", () => {
    const at = (row: number, column: number) => ({ argument: "new", corner: { sheet: "Beds", row, column } });
    expect(readPairs(block([["Bare", 1, 2]]), block([[3, 4, 5]], at(2, 5)), "refuse")).toMatchObject({
      first: { rows: 1, columns: 2 },
      second: { rows: 1, columns: 3 },
    });
    expect(pairsOf(block([["slugs"]]), block([[3]], at(1, 5)))).toEqual([["text"], [3]]);
    const [usual, tried] = [
      [
        ["slugs", 1],
        [2, 3],
      ],
      [
        [4, 5],
        [6, 7],
      ],
    ] as const;
    expect(pairsOf(block(usual), block(tried, at(1, 6)))).toEqual([
      ["text", 1, 2, 3],
      [4, 5, 6, 7],
    ]);
  });

  it("keeps the first pair when its usual plant has no number", () => {
    expect(pairsOf(column([null, 1]), beside([3, 4]))).toEqual([
      ["empty", 1],
      [3, 4],
    ]);
  });

  it("does not take a lost plant for a heading", () => {
    expect(pairsOf(column(["lost", 1]), beside([3, 4], 7))).toEqual([
      ["lost", 1],
      [3, 4],
    ]);
  });
});

it("readPairs refuses ranges of different size", () => {
  expect(readPairs(column([1, 2, 3]), beside([4, 5]), "refuse")).toEqual({
    problem: "shapes-differ",
    first: { argument: "usual", rows: 3, columns: 1 },
    second: { argument: "new", rows: 2, columns: 1 },
  });
});

it("readPairs hands on what readSample refuses in either range", () => {
  expect(readPairs(column([1, 2]), beside([3, -4]), "refuse")).toMatchObject({ problem: "negative-amount", given: -4 });
  expect(readPairs(column([-1, 2]), beside([3, -4]), "refuse")).toMatchObject({
    problem: "negative-amount",
    given: -1,
  });
});

it("readPairs reads as many entries in both, whatever stands there", () => {
  const cells = fc.array(fc.tuple(anyCell, anyCell), { maxLength: 20 });
  fc.assert(
    fc.property(cells, (rows) => {
      const pairs = readPairs(column(rows.map(([usual]) => usual)), beside(rows.map(([, tried]) => tried)), "keep");
      expect(isProblem(pairs) || pairs.usual.entries.length === pairs.tried.entries.length).toBe(true);
    }),
  );
});
