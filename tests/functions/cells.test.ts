import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { doors } from "../../src/functions/doors";
import { at, cell, type Id, matrix, number, refused, replyOf } from "./call";

const ids = Object.keys(doors) as Id[];

describe("a cell's meaning in a per-plant column (METHODS 4.1)", () => {
  const lost = [
    "lost",
    "LOST",
    "dead",
    "died – slugs",
    "stolen",
    "broken",
    "missing plant",
    "lost (slugs)",
    "lost 14 July",
    "lost to slugs",
  ];
  it.each(lost)("'%s' is a lost plant", (word) => {
    expect(cell("PERPLANT", [4, word, 5], "Plants lost")).toBe(1);
    expect(cell("PERPLANT", [word, 4, 5], "Plants lost")).toBe(1);
  });

  it.each(["none", "nil", "nothing", "-", "–", "—"])("'%s' is a plant that bore nothing", (word) => {
    expect(cell("PERPLANT", [4, word, 5])).toBe(3);
    expect(cell("PERPLANT", [word, 4, 5])).toBe(3);
  });

  it.each([
    "n/a",
    "na",
    "?",
    "forgot",
    "not weighed",
    "broken stem, still cropping",
    "lost 2 fruit",
    "slugs",
    true,
    false,
    { type: "Error", basicValue: "#N/A" },
    { type: "Error", basicType: "Error", basicValue: "#DIV/0!" },
    Object.assign(new Error("x"), { code: "#VALUE!" }),
    Number.NaN,
    Number.POSITIVE_INFINITY,
    45_112,
  ])("%s is a plant not recorded", (value) => {
    const table = matrix("PERPLANT", [4, value, 5, 6], "table");
    expect(table.slice(0, 5).map(([, shown]) => shown)).toEqual([5, 4, 0, 1, 3]);
  });

  it.each([
    [{ type: "Double", basicValue: 6, numberFormat: "0.0" }, 6],
    [{ type: "FormattedNumber", basicValue: 6 }, 6],
    [{ type: "Entity", text: "six", basicType: "Double", basicValue: 6 }, 6],
    [{ type: "String", basicValue: "6 *" }, 6],
    ["approx 6", 6],
    ["~6", 6],
    ["6*", 6],
    ["2+4", 6],
    [-0, 0],
  ])("%j is the number %d", (value, meant) => {
    expect(number("PERPLANT", [4, value, 5], "Total")).toBe(9 + meant);
  });

  it("units are converted and told; marks removed are told", () => {
    expect(cell("PERPLANT", ["Straw (g)", "1.5 kg", 500, "250 g"], "Total")).toBe(2250);
    expect(cell("PERPLANT", ["Straw (g)", "1.5 kg", 500, "250 g"], "cautions")).toMatch(/2 cells had units or marks/);
    expect(cell("PERPLANT", [4, 5, 6], "cautions")).not.toMatch(/units or marks/);
  });
});

describe("total and average rows (METHODS 4.1)", () => {
  const plants = [3, 4, 6, 5, 4];
  it.each([
    ["PERPLANT", [[...plants, 22]]],
    [
      "UPDOWN",
      [
        [...plants, 22],
        [1, 2],
      ],
    ],
    [
      "COMPARETWO",
      [
        [1, 2],
        [...plants, 22],
      ],
    ],
    ["UNEVENNESS", [[...plants, 22]]],
  ] as const)("%s refuses a total, and an average with more decimals", (id, given) => {
    expect(refused(id, ...given).message).toMatch(
      /^Row 6 of \w+ is the total of the rows above it\. End the range at row 5/,
    );
    const average = given.map((range) => range.map((value) => (value === 22 ? 4.4 : value)));
    expect(refused(id, ...average).message).toMatch(/^Row 6 of \w+ is the average of the rows above it/);
    const placed = given.map((range) => at(`S!D2:D${range.length + 1}`, range));
    expect(refused(id, ...placed).message).toBe("Cell D7 is the total of the cells above it. End the range at D6.");
  });

  it("an average that may be chance is a caution; three numbers above are too few to tell", () => {
    expect(cell("PERPLANT", [3, 4, 6, 7, 5], "cautions")).toMatch(
      /equals the average of those above\. Is it an average row\?/,
    );
    expect(cell("PERPLANT", [3, 4, 5, 12], "Plants counted")).toBe(4);
  });
});

describe("headings", () => {
  it("name the groups, and change no figure", () => {
    const [usual, tried] = [
      [4, 5, 4.5, 6, 5.5],
      [7, 8, 6, 9, 8.2],
    ];
    const plain = matrix("COMPARETWO", usual, tried, "table");
    const named = matrix("COMPARETWO", ["Bare soil", ...usual], ["Straw (kg)", ...tried], "table");
    expect(named.slice(0, -3)).toEqual(plain.slice(0, -3));
    expect(cell("COMPARETWO", ["Bare soil", ...usual], ["Straw (kg)", ...tried], "words")).toMatch(
      /Straw.*bare soil/is,
    );
    expect(cell("COMPARETWO", usual, tried, "words")).toMatch(/the new.*the usual/is);
  });

  it.each([[2023], ["lost"], ["none"], ["12 g"]])("%s in the first cell is no heading", (first) => {
    expect(cell("PERPLANT", [first, 4, 5], "Plants set out")).toBe(3);
  });
});

const anything = fc.oneof(
  fc.integer({ min: -9, max: 60 }),
  fc.double(),
  fc.constantFrom<unknown>(
    "lost",
    "none",
    "n/a",
    "",
    "Straw",
    "30%",
    "one each",
    "pairs",
    "table",
    "words",
    "say",
    "2 kg",
    "1,250",
    "5/7",
  ),
  fc.constantFrom<unknown>(
    null,
    undefined,
    true,
    false,
    Number.NaN,
    Number.NEGATIVE_INFINITY,
    1e308,
    5e-324,
    0,
    45_112,
  ),
  fc.constantFrom<unknown>(
    { type: "Error", basicValue: "#N/A" },
    { type: "Double", basicValue: 3 },
    { type: "Entity", text: "x" },
    {},
  ),
  fc.string(),
);
const range = fc.array(anything, { maxLength: 8 });
const option = fc.constantFrom<unknown>(
  null,
  undefined,
  "",
  "table",
  "words",
  "cautions",
  "leave out",
  "pairs",
  0.2,
  0.8,
  2,
  4,
  "30%",
);
const argument = fc.oneof(
  { weight: 4, arbitrary: range },
  { weight: 2, arbitrary: anything },
  { weight: 3, arbitrary: option },
);

/** PLAINNUMBER reads cell by cell, so that a refusal may stand in one cell of a block. */
function mayLeave(id: Id, value: unknown): void {
  if (id === "PLAINNUMBER" && value instanceof Error) {
    expect(value).toMatchObject({ code: "#VALUE!", message: expect.stringMatching(/^.{12,}\.$/su) });
    return;
  }
  expect(typeof value === "string" || Number.isFinite(value), `${id}: ${String(value)}`).toBe(true);
  if (typeof value === "string") expect(value).not.toMatch(/undefined|\bNaN\b|\[object|Infinity/);
}

it("whatever arrives, only finite numbers and texts leave, or a refusal with a sentence", () => {
  const seen = { cells: 0, refusals: 0 };
  fc.assert(
    fc.property(fc.constantFrom(...ids), fc.array(argument, { maxLength: 8 }), (id, given) => {
      const reply = replyOf(id, ...given);
      seen[Array.isArray(reply) ? "cells" : "refusals"] += 1;
      if (!Array.isArray(reply)) {
        expect(["#VALUE!", "#N/A"]).toContain(reply.code);
        expect(reply.message).toMatch(/^.{12,}[.?!]$/su);
        expect(reply.message.replace("is undefined", "")).not.toMatch(/undefined|\bNaN\b|\[object|Infinity/);
        return;
      }
      expect(new Set(reply.map((row) => row.length)).size).toBe(1);
      for (const value of reply.flat()) mayLeave(id, value);
    }),
    { numRuns: 3000, seed: 7 },
  );
  expect(Math.min(seen.cells, seen.refusals)).toBeGreaterThan(100);
});
