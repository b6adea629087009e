import { describe, expect, it, vi } from "vitest";
import { plainBlock } from "../../src/cells/blocks";
import { show, wholeTable } from "../../src/cells/show";
import type { Showable } from "../../src/cells/showable";
import type { Line, Output } from "../../src/nouns/line";
import { isProblem } from "../../src/nouns/problem";

const line = (label: string, value: Output): Line => ({ label, format: "text", value: () => value });

function outputs(showable: Showable, asked: string | null) {
  const shown = show(showable, asked);
  return isProblem(shown) ? shown : shown.outputs;
}

const pairs: Showable = {
  answer: () => 44,
  lines: [line("Change low", 13), line("Words", "a label"), line("short", "the label")],
  columns: null,
  words: () => "some words",
  say: () => "we say",
  cautions: () => "look out",
  own: [line("short", "our own")],
  foreign: [{ word: "pairs", argument: "how", placesOn: 1 }],
};

const rows: Showable = {
  ...pairs,
  lines: [line("Method", "by hand")],
  columns: () => ({
    header: ["Treatment", "Plants", "Unevenness"],
    rows: [
      ["Straw", 7, 0.3],
      ["Plants", 8, 0.2],
      ["method", 6, 0.1],
      ["short", 5, 0.4],
      ["answer", 4, 0.5],
    ],
    main: 2,
  }),
};

it("an answer that is a list is shown as that list", () => {
  const list = [["Spot"], [1], [2]];
  expect(outputs({ ...pairs, answer: () => list }, null)).toEqual(list);
});

it("rows without names of their own are neither shown nor listed", () => {
  const spots = { header: ["Spot", "Label"], rows: [[3, "P3"]], main: null };
  const listed = { ...pairs, columns: () => spots };
  expect(show(listed, "3")).toMatchObject({ problem: "unknown-show", allowed: expect.not.arrayContaining(["3"]) });
});

describe("order of reading", () => {
  it.each([
    [null, [[44]]],
    ["answer", [[44]]],
    ["WORDS", [["some words"]]],
    ["say", [["we say"]]],
    ["cautions", [["look out"]]],
    ["short", [["our own"]]],
    [" change   LOW ", [[13]]],
  ])("%s", (asked, shown) => {
    expect(outputs(pairs, asked)).toEqual(shown);
  });

  it.each([
    ["method", [["by hand"]]],
    ["plants", [[7], [8], [6], [5], [4]]],
    ["straw", [[0.3]]],
    ["short", [["our own"]]],
    ["answer", [[44]]],
  ])("in a table by rows: %s", (asked, shown) => {
    expect(outputs(rows, asked)).toEqual(shown);
  });
});

describe("the whole table", () => {
  it("has two columns without a header, or a header and a footer filled up", () => {
    expect(outputs(pairs, "table")).toEqual([
      ["Change low", 13],
      ["Words", "a label"],
      ["short", "the label"],
    ]);
    expect(wholeTable(rows).outputs[0]).toEqual(["Treatment", "Plants", "Unevenness"]);
    expect(wholeTable(rows).outputs.at(-1)).toEqual(["Method", "by hand", ""]);
  });
});

it("a function's own table is asked for like any word", () => {
  const tables = { "all pairs": () => plainBlock([["a", 1]]) };
  expect(outputs({ ...pairs, tables }, " All  PAIRS")).toEqual([["a", 1]]);
});

it("a column of a table without rows is one empty cell, as a cell must show something", () => {
  const empty = { ...pairs, columns: () => ({ header: ["What", "Where"], rows: [], main: 1 }) };
  expect(show(empty, "where")).toEqual({ outputs: [[""]], formats: [["text"]] });
});

it("an answer that is the whole table is shown as that", () => {
  expect(show({ ...rows, answer: null }, null)).toEqual(show(rows, "table"));
});

describe("how each cell is best shown", () => {
  const inPercent: Showable = {
    ...pairs,
    answerFormat: "percent",
    lines: [{ label: "Change", format: "percent", value: () => 0.5 }],
    tables: { pairs: () => plainBlock([["a", 1]]) },
  };
  const byColumn: Showable = {
    ...inPercent,
    columns: () => ({ header: ["Treatment", "Share"], rows: [["Straw", 0.5]], main: 1, formats: ["text", "percent"] }),
  };

  it.each([
    [inPercent, null, [["percent"]]],
    [inPercent, "words", [["text"]]],
    [inPercent, "change", [["percent"]]],
    [inPercent, "table", [["text", "percent"]]],
    [inPercent, "pairs", [["text", "text"]]],
    [byColumn, "share", [["percent"]]],
    [byColumn, "straw", [["percent"]]],
    [
      byColumn,
      "table",
      [
        ["text", "text"],
        ["text", "percent"],
        ["text", "percent"],
      ],
    ],
  ])("%#: %s", (showable, asked, formats) => {
    expect(show(showable, asked)).toMatchObject({ formats });
  });
});

describe("what cannot be shown", () => {
  it("is told with everything that can be", () => {
    expect(show(pairs, "p")).toEqual({
      problem: "unknown-show",
      given: "p",
      allowed: ["answer", "table", "words", "say", "cautions", "short", "Change low", "Words", "short"],
    });
    expect(show(rows, "Strw")).toMatchObject({ allowed: expect.arrayContaining(["Plants", "Straw"]) });
  });

  it.each(["constructor", "__proto__", "toString"])("is not found in what every record has: %s", (asked) => {
    expect(show(pairs, asked)).toMatchObject({ problem: "unknown-show", given: asked });
    expect(show({ ...pairs, tables: {} }, asked)).toMatchObject({ problem: "unknown-show" });
  });

  it("a word of another argument is told where it goes", () => {
    expect(show(pairs, "PAIRS")).toEqual({ problem: "show-elsewhere", given: "PAIRS", argument: "how", placesOn: 1 });
  });

  it("a number that is due but missing is refused alone, not in the table", () => {
    const problem = { problem: "all-lost", where: "B2:B9" } as const;
    const missing: Showable = { ...pairs, missing: { shows: ["answer", "Change low"], problem } };
    for (const asked of [null, "answer", "change low"]) expect(show(missing, asked)).toBe(problem);
    expect(outputs(missing, "words")).toEqual([["some words"]]);
    expect(show(missing, "table")).toEqual(show(pairs, "table"));
  });
});

it("works out only what is asked for, and lets nothing but numbers and texts out", () => {
  const words = vi.fn(() => "some words");
  const never = { ...pairs, words, lines: [line("Change", Number.POSITIVE_INFINITY)] };
  expect(outputs(never, "Change")).toEqual([["too large to work out"]]);
  expect(words).not.toHaveBeenCalled();
});
