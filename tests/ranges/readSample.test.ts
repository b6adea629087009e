import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";
import { isProblem } from "../../src/nouns/problem";
import type { Entry, Sample } from "../../src/nouns/sample";
import { readSample } from "../../src/ranges/readSample";
import { anyCell } from "./anyCell";
import { block, column } from "./column";

function sampleOf(range: CellRange): Sample {
  const sample = readSample(range, "refuse");
  if (isProblem(sample)) throw new Error(sample.problem);
  return sample;
}

function said(entry: Entry | undefined): unknown {
  if (entry?.kind === "value") return [entry.value, entry.read];
  return entry?.kind === "not-recorded" ? entry.why : entry?.kind;
}

/** What one cell means among plants of ordinary size. */
function meaning(cell: Cell): unknown {
  return said(sampleOf(column(["Straw", 300, cell, 310, 290])).entries[1]);
}

describe("readSample gives each cell its meaning in a per-plant column (METHODS 4.1)", () => {
  it.each([
    ["a number", 3018.5, [3018.5, "number"]],
    ["zero: lived, bore nothing", 0, [0, "number"]],
    ["a number typed as text", "506", [506, "number"]],
    ["a marked number", "506*", [506, "mark-removed"]],
    ["a number with a word", "approx 179", [179, "mark-removed"]],
    ["a sum", "2+1", [3, "mark-removed"]],
    ["a unit", "177 g", [177, "unit-converted"]],
    ["a lost-word", "lost", "lost"],
    ["a lost-word in capitals", "DEAD", "lost"],
    ["a lost-word with its cause", "died – slugs", "lost"],
    ["a lost-word with a date", "lost 14 July", "lost"],
    ["a lost-word that goes on otherwise", "broken stem, still cropping", "text"],
    ["a lost-word with an amount", "lost 2 fruit", "text"],
    ["a none-word", "none", [0, "none-word"]],
    ["a dash", "–", [0, "none-word"]],
    ["an empty cell", null, "empty"],
    ["n/a", "n/a", "text"],
    ["not weighed", "not weighed", "text"],
    ["another note", "slugs", "text"],
    ["a count and a note", "2 (1 split)", "text"],
    ["a percent", "15%", "text"],
    ["a doubtful number", "1,250", "doubtful-number"],
    ["an error value", { error: "#N/A" }, "error"],
    ["TRUE", true, "true-or-false"],
    ["a date that Excel made", 45_112, "date"],
    ["a huge number", 2e9, [2e9, "number"]],
    ["a number far from the others", 3100, [3100, "number"]],
  ])("%s", (_name, cell, means) => {
    expect(meaning(cell)).toEqual(means);
  });
});

describe("readSample refuses a harvest below zero", () => {
  it("and says where it stands", () => {
    expect(readSample(column(["Straw", 5, -3, -4]), "refuse")).toEqual({
      problem: "negative-amount",
      place: { argument: "usual", row: 3, column: null, cell: "D3" },
      given: -3,
    });
  });

  it("also when it is typed with a unit", () => {
    expect(readSample(column([5, "−3 g"]), "refuse")).toMatchObject({ problem: "negative-amount", given: -3 });
  });

  it("but keeps any other measurement", () => {
    expect(readSample(column([5, -3]), "keep")).toMatchObject({ entries: [{ value: 5 }, { value: -3 }] });
  });
});

describe("readSample takes a heading", () => {
  it("from a first cell that is text and says nothing about a plant", () => {
    const sample = sampleOf(column(["Straw (g)", 5, 6]));
    expect(sample).toMatchObject({ name: "Straw", unit: "g", where: "D1:D3" });
    expect(sample.entries.map(({ place }) => place.cell)).toEqual(["D2", "D3"]);
  });

  it.each(["lost", "-", "506*", "not weighed", "n/a"])("but not from %j, which is the first plant", (first) => {
    expect(sampleOf(column([first, 5, 6]))).toMatchObject({ name: null, entries: { length: 3 } });
  });

  it("alone: a range without plants", () => {
    expect(sampleOf(column(["Straw"]))).toMatchObject({ name: "Straw", entries: [] });
  });
});

describe("readSample counts the cells", () => {
  it("without empty cells at the end, with those before", () => {
    expect(sampleOf(column([5, null, 6, null, " "])).entries.map(said)).toEqual([
      [5, "number"],
      "empty",
      [6, "number"],
    ]);
  });

  it("with those at the end as far as the extent says", () => {
    expect(readSample(column([5, null, null]), "refuse", { length: 2 })).toMatchObject({ entries: { length: 2 } });
  });

  it("row by row in a block, with each one's place", () => {
    const sample = sampleOf(
      block([
        [1, 2],
        [3, null],
        [null, null],
      ]),
    );
    expect(sample.entries.map(said)).toEqual([
      [1, "number"],
      [2, "number"],
      [3, "number"],
    ]);
    expect(sample.entries[1]?.place).toEqual({ argument: "usual", row: 1, column: 2, cell: "E1" });
  });

  it("in one row with its heading in front", () => {
    expect(sampleOf(block([["Straw", 1, 2]]))).toMatchObject({ name: "Straw", entries: [{ value: 1 }, { value: 2 }] });
  });

  it("of an empty range as none", () => {
    expect(sampleOf(column([null, null]))).toMatchObject({ name: null, entries: [], unit: null });
  });

  it("and names the row within the argument when no address is known", () => {
    const sample = sampleOf(column([5], { corner: null, argument: "new" }));
    expect(sample).toMatchObject({ where: "new", entries: [{ place: { argument: "new", row: 1, cell: null } }] });
  });
});

/** The demo's bare-soil plants, in g. */
const BARE = ["Bare soil", 2252, 3203, 2264, 2705, 3242, 2787, 4152, 3542];

describe("readSample refuses a range that ends with its own total or average", () => {
  const place = { argument: "usual", row: 10, column: null, cell: "D10" };
  const endBefore = { argument: "usual", row: 9, column: null, cell: "D9" };

  it("Cell D10 is the average of the cells above it. End the range at D9.", () => {
    expect(readSample(column([...BARE, 3018.375]), "refuse")).toEqual({ problem: "average-at-end", place, endBefore });
  });

  it("the same with a total, though 40 000 looks like a date", () => {
    const plants = ["Straw", 4900, 4950, 4990, 5010, 5000, 5030, 5060, 5060];
    expect(readSample(column([...plants, 40_000]), "refuse")).toEqual({ problem: "total-at-end", place, endBefore });
  });

  it("a note below the average does not hide it", () => {
    expect(readSample(column([...BARE, 3018.375, "checked"]), "keep")).toEqual({
      problem: "average-at-end",
      place,
      endBefore,
    });
  });

  it("what only may be an average is noted for caution C35", () => {
    expect(sampleOf(column([3, 4, 5, 4, 4])).averageAtEnd).toMatchObject({ cell: "D5" });
    expect(sampleOf(column(BARE)).averageAtEnd).toBeNull();
  });
});

describe("readSample counts zeros that may be empty cells", () => {
  it("when the host does not tell them apart: number cells only, no none-words, no typed “0”", () => {
    const cells = [0, "none", "0", "0 g", 5, 0];
    expect(sampleOf(column(cells, { zerosVerified: false })).zerosUnverified).toBe(2);
    expect(sampleOf(column(cells)).zerosUnverified).toBe(0);
  });
});

it("readSample reads an empty cell alike as null and as an empty text", () => {
  fc.assert(
    fc.property(fc.array(anyCell, { maxLength: 30 }), (cells) => {
      const empties = cells.map((cell) => (cell === null ? "" : cell));
      expect(readSample(column(empties), "keep")).toEqual(readSample(column(cells), "keep"));
    }),
  );
});

it("readSample never throws, gives finite values, and one entry for each cell", () => {
  fc.assert(
    fc.property(fc.array(anyCell, { maxLength: 30 }), (cells) => {
      const sample = readSample(column(cells), "keep", { length: cells.length, heading: false });
      if (isProblem(sample)) return;
      expect(sample.entries.length).toBe(cells.length);
      expect(sample.entries.every((entry) => entry.kind !== "value" || Number.isFinite(entry.value))).toBe(true);
    }),
  );
});

it("readSample reads 100 000 cells with long notes and leaves none out", () => {
  const cells = Array.from({ length: 100_000 }, (_, at) =>
    at % 3 === 0 ? `lost ${"to slugs ".repeat(20)}` : at % 977,
  );
  expect(sampleOf(column(cells)).entries).toHaveLength(cells.length);
});
