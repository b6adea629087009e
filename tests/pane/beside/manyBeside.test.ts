import { describe, expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { findCalls } from "../../../src/formula/findCalls";
import type { Cell } from "../../../src/nouns/cell";
import { ask } from "../../../src/pane/ask";
import { around } from "../../../src/pane/beside/around";
import { comparisons } from "../../../src/pane/beside/comparisons";
import type { Context } from "../../../src/pane/context";
import { memorySheet } from "../memorySheet";

const heading = ["Plant", "Bed", "Mulch", "Grams"];
const mulches = ["Bare soil", "Straw", "Woodchip"];
/** Three mulches in three beds, every bed with all of them, unless placed otherwise. */
const plants = (
  bedOf: (mulch: number, bed: number) => string = (_, bed) => `${bed + 1}`,
): readonly (readonly Cell[])[] =>
  mulches.flatMap((mulch, at) =>
    [0, 1, 2].map((bed) => [`P${at}-${bed}`, bedOf(at, bed), mulch, 2000 + 700 * at + (((at + 2) * bed * 97) % 300)]),
  );

async function aroundCall(rows: readonly (readonly Cell[])[], formula: string) {
  const sheet = memorySheet(theDesk, { Grams: "Mulch!D1:D10" });
  sheet.fill("A1", rows);
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  const context = { sheet, desk: theDesk, comparisons: comparisons(sheet) } as Partial<Context> as Context;
  const asked = await ask(call, { sheet, desk: theDesk, home: "Mulch" });
  if (asked.outcome !== "answer") throw new Error(asked.outcome);
  const found = await around({ call, home: "Mulch", asked }, context);
  return { ...found, codes: found.cautions.map(({ caution }) => caution) };
}

const long = [heading, ...plants()];

describe("a bed column beside several treatments that share beds", () => {
  it.each([
    ["=FAIRBED.COMPAREMANY(D1:D10,C1:C10)", "=FAIRBED.COMPAREMANY(D1:D10,C1:C10,,B1:B10)"],
    [
      '=FAIRBED.COMPAREMANY($D$2:$D$10,$C$2:$C$10,"words",,"Straw")',
      '=FAIRBED.COMPAREMANY($D$2:$D$10,$C$2:$C$10,"words",$B$2:$B$10,"Straw")',
    ],
    [
      "=FAIRBED.COMPAREMANY(Mulch!D1:D10,Mulch!C1:C10)",
      "=FAIRBED.COMPAREMANY(Mulch!D1:D10,Mulch!C1:C10,,Mulch!B1:B10)",
    ],
    ["=FAIRBED.COMPAREMANY(Grams,C1:C10)", "=FAIRBED.COMPAREMANY(Grams,C1:C10,,Mulch!B1:B10)"],
    [
      '=FAIRBED.COMPAREMANY(D1:D10,C1:C10,,,"Straw","own unevenness",5%)',
      '=FAIRBED.COMPAREMANY(D1:D10,C1:C10,,B1:B10,"Straw",,5%)',
    ],
  ])("%s: offers the call within beds (C11)", async (formula, offered) => {
    const found = await aroundCall(long, formula);
    expect([found.codes, found.withinBeds, found.laysOutAnew]).toEqual([["C11"], offered, false]);
    expect((await aroundCall(long, offered)).codes).toEqual([]);
  });
});

it("each treatment in its own bed: bed and treatment cannot be told apart (C18), and nothing is offered", async () => {
  const found = await aroundCall(
    [heading, ...plants((mulch) => `${mulch + 1}`)],
    "=FAIRBED.COMPAREMANY(D1:D10,C1:C10)",
  );
  expect([found.codes, found.withinBeds, found.laysOutAnew]).toEqual([["C18"], null, false]);
});

it("the same of two treatments", async () => {
  const rows = [heading, ...plants((mulch) => `${mulch + 1}`)];
  expect((await aroundCall(rows, "=FAIRBED.COMPARETWO(D2:D4,D5:D7)")).codes).toEqual(["C18"]);
});

it("beds of one treatment each, several to a treatment, and no bed column say nothing", async () => {
  const apart = [heading, ...plants((mulch, bed) => `${mulch * 3 + bed}`)];
  expect((await aroundCall(apart, "=FAIRBED.COMPAREMANY(D1:D10,C1:C10)")).codes).toEqual([]);
  const unnamed = [["Plant", "Row", "Mulch", "Grams"], ...plants()];
  expect((await aroundCall(unnamed, "=FAIRBED.COMPAREMANY(D1:D10,C1:C10)")).codes).toEqual([]);
});

it("a plant that comes twice beside them is told of, with beds as well (C02)", async () => {
  const twice = long.map((row, at) => (at === 3 ? ["P0-0", ...row.slice(1)] : row));
  expect((await aroundCall(twice, "=FAIRBED.COMPAREMANY(D1:D10,C1:C10,,B1:B10)")).codes).toEqual(["C02"]);
});
