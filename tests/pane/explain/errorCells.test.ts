import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { comparisons } from "../../../src/pane/beside/comparisons";
import type { Context } from "../../../src/pane/context";
import { errorCellsText } from "../../../src/pane/explain/errorCells";
import { see } from "../../../src/pane/explain/seen";
import { memorySheet } from "../memorySheet";

/** What is said of the errors that a formula reads in A1:B4. */
async function said(formula: string): Promise<string | null> {
  const sheet = memorySheet(theDesk);
  sheet.fill("A1", [
    [3, 4],
    [{ error: "#N/A" }, 5],
    [5, { error: "#DIV/0!" }],
    [4, 6],
  ]);
  const context = { sheet, desk: theDesk, comparisons: comparisons(sheet) } as Partial<Context> as Context;
  const wanted = { sheet: "Mulch", address: "E1", formula, value: null, numberFormat: "General", pick: 0 };
  const seen = await see(wanted, context);
  if (seen === null) throw new Error("no call");
  return errorCellsText(seen);
}

it("names each by its place", async () => {
  const text = "A2 holds #N/A and was left out. B3 holds #DIV/0! and was left out.";
  expect(await said("=FAIRBED.COMPARETWO(A1:A4,B1:B4)")).toBe(text);
});

it("says nothing where there is none", async () => {
  expect(await said("=FAIRBED.COMPARETWO(A3:A4,B1:B2)")).toBeNull();
});

it("nor of PLAINNUMBER, which leaves none out but hands each on", async () => {
  expect(await said("=FAIRBED.PLAINNUMBER(A1:A4)")).toBeNull();
});
