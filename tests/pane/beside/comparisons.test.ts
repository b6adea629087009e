import { expect, it, vi } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import { findCalls } from "../../../src/formula/findCalls";
import { comparisons } from "../../../src/pane/beside/comparisons";
import { memorySheet } from "../memorySheet";

const callOf = (formula: string) => {
  const [call] = findCalls(formula);
  if (call === undefined) throw new Error("no call");
  return call;
};

it("counts different plants compared, not how often they are asked, and searches the workbook only for new ones", async () => {
  const sheet = memorySheet(theDesk);
  const search = vi.spyOn(sheet, "calls");
  const count = comparisons(sheet);
  const first = "=FAIRBED.COMPARETWO(A1:A4,B1:B4)";
  await sheet.enter("F1", first);
  await sheet.enter("F2", '=FAIRBED.COMPARETWO($A$1:$A$4,Mulch!B1:B4,"say","beds")');
  await sheet.enter("F3", "=FAIRBED.UPDOWN(A1:A4,B1:B4)");
  expect(await count(callOf(first), "Mulch")).toBe(1);
  expect(await count(callOf(first), "Mulch")).toBe(1);
  expect(search).toHaveBeenCalledTimes(1);
  await sheet.enter("F4", "=FAIRBED.COMPARETWO(A1:A4,C1:C4)");
  expect(await count(callOf("=FAIRBED.COMPARETWO(A1:A4,C1:C4)"), "Mulch")).toBe(2);
});
