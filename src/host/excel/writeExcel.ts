import type { Entry, SheetTrouble } from "../sheet";
import { inExcel } from "./inExcel";

/** Writes entries in one batch; over filled cells only when `over` says so, and else nothing when one is filled. */
export function writeExcel(entries: readonly Entry[], over: boolean): Promise<void> {
  return inExcel(entries[0]?.address ?? "", async (context) => {
    const targets = entries.map((entry) => {
      const cell = context.workbook.worksheets.getItem(entry.sheet).getRange(entry.address);
      cell.load("valueTypes");
      return { entry, cell };
    });
    await context.sync();
    const filled = targets.find(({ cell }) => cell.valueTypes[0]?.[0] !== "Empty");
    if (filled !== undefined && !over) throw notEmpty(filled.entry.address);
    for (const { entry, cell } of targets) {
      // The format first: a cell formatted as text would keep the formula as text.
      cell.numberFormat = [[entry.format]];
      cell.formulas = [[entry.content]];
    }
    await context.sync();
  });
}

function notEmpty(where: string): SheetTrouble {
  return { trouble: "not-empty", where };
}
