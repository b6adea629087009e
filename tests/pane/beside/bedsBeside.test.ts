import { describe, expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { findCalls } from "../../../src/formula/findCalls";
import type { Cell } from "../../../src/nouns/cell";
import { ask } from "../../../src/pane/ask";
import { around } from "../../../src/pane/beside/around";
import { comparisons } from "../../../src/pane/beside/comparisons";
import type { Context } from "../../../src/pane/context";
import { memorySheet } from "../memorySheet";

/** What is added around the call in J1 of a sheet with these rows from A1 on. */
async function aroundCall(rows: readonly (readonly Cell[])[], formula: string) {
  const sheet = memorySheet(theDesk);
  sheet.fill("A1", rows);
  await sheet.enter("J1", formula);
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  const context = { sheet, desk: theDesk, comparisons: comparisons(sheet) } as Partial<Context> as Context;
  const asked = await ask(call, { sheet, desk: theDesk, home: "Mulch" });
  return around({ call, home: "Mulch", asked }, context);
}

const codes = ({ cautions }: Awaited<ReturnType<typeof aroundCall>>) => cautions.map(({ caution }) => caution);

const sideBySide = [
  ["Bed", "Bare soil", "Straw"],
  [1, 2000, 3000],
  [2, 2500, 3900],
  [3, 2200, 3100],
  [4, 2600, 4000],
];
const oneColumn = [
  ["Plant", "Bed", "Mulch", "Grams"],
  ["P1", "1", "Bare soil", 2000],
  ["P2", "2", "Bare soil", 2500],
  ["P3", "3", "Bare soil", 2300],
  ["P4", "2", "Straw", 3900],
  ["P5", "1", "Straw", 3000],
  ["P6", "3", "Straw", 3300],
];

describe("a bed column beside two treatments", () => {
  it("side by side offers the same call within beds", async () => {
    const found = await aroundCall(sideBySide, "=FAIRBED.COMPARETWO(B1:B5,C1:C5)");
    expect(codes(found)).toEqual(["C11"]);
    expect(found.withinBeds).toBe('=FAIRBED.COMPARETWO(B1:B5,C1:C5,,"beds")');
  });

  it("without their headings in the ranges as well", async () => {
    const found = await aroundCall(sideBySide, '=FAIRBED.COMPARETWO(B2:B5,C2:C5,"say")');
    expect(found.withinBeds).toBe('=FAIRBED.COMPARETWO(B2:B5,C2:C5,"say","beds")');
  });

  it("is not told of where the call compares within beds already, or looks at the ranks within them", async () => {
    for (const how of ["beds", "pairs", "pairs ranks"]) {
      expect(codes(await aroundCall(sideBySide, `=FAIRBED.COMPARETWO(B1:B5,C1:C5,,"${how}")`))).toEqual([]);
    }
  });

  it("offers COMPAREMANY for plants in one column whose beds come in another order", async () => {
    const found = await aroundCall(oneColumn, "=FAIRBED.COMPARETWO(D2:D4,D5:D7)");
    expect(codes(found)).toEqual(["C11"]);
    expect(found.withinBeds).toBe('=FAIRBED.COMPAREMANY(Mulch!D2:D7,Mulch!C2:C7,,Mulch!B2:B7,"Bare soil")');
    const again = await aroundCall(oneColumn, found.withinBeds ?? "");
    expect(again.cautions).toEqual([]);
  });

  it("offers it with the same worthwhile change, and the same rule for lost plants", async () => {
    const call = (rest: string) => `=FAIRBED.COMPARETWO(D2:D4,D5:D7${rest})`;
    const offered = async (rest: string) => (await aroundCall(oneColumn, call(rest))).withinBeds?.split("B2:B7")[1];
    expect(await offered(",,,20%")).toBe(',"Bare soil",,20%)');
    expect(await offered(',,,,,"count as zero"')).toBe(',"Bare soil",,,"count as zero")');
    expect(await offered(',"say",,Mulch!K1,90%,"count as zero"')).toBe(',"Bare soil",,Mulch!K1,"count as zero")');
  });

  it("asks for a new layout where several plants of a treatment share a bed", async () => {
    const rows = sideBySide.map(([bed, ...rest], at) => [at === 0 ? (bed ?? null) : at % 2, ...rest]);
    const found = await aroundCall(rows, "=FAIRBED.COMPARETWO(B1:B5,C1:C5)");
    expect([codes(found), found.withinBeds, found.laysOutAnew]).toEqual([["C11"], null, true]);
  });

  it("says nothing where the treatments share fewer than two beds, or an empty column stands between", async () => {
    const apart = oneColumn.map((row, at) => row.map((cell, column) => (column === 1 && at > 0 ? `${at}` : cell)));
    expect(codes(await aroundCall(apart, "=FAIRBED.COMPARETWO(D2:D4,D5:D7)"))).toEqual([]);
    const far = sideBySide.map(([bed = null, ...rest]) => [bed, null, ...rest]);
    expect(codes(await aroundCall(far, "=FAIRBED.COMPARETWO(C1:C5,D1:D5)"))).toEqual([]);
  });
});
