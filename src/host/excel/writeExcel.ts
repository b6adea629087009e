import type { Entry, SheetTrouble } from "../sheet";
import { inExcel } from "./inExcel";

/** Writes entries, all or none; over filled cells only when `over` says so. */
export function writeExcel(entries: readonly Entry[], over: boolean): Promise<void> {
  return inExcel(entries[0]?.address ?? "", async (context) => {
    const cells = entries.map(({ sheet, address }) => context.workbook.worksheets.getItem(sheet).getRange(address));
    for (const cell of cells) cell.load("valueTypes");
    await context.sync();
    const filled = cells.findIndex(({ valueTypes }) => valueTypes[0]?.[0] !== "Empty");
    if (filled >= 0 && !over) throw notEmpty(entries[filled]?.address ?? "");
    for (const [index, { content, format }] of entries.entries()) {
      const cell = cells[index];
      if (cell === undefined) continue;
      // The format first: a cell formatted as text would keep the formula as text.
      cell.numberFormat = [[format]];
      cell.formulas = [[content]];
    }
    await context.sync();
  });
}

function notEmpty(where: string): SheetTrouble {
  return { trouble: "not-empty", where };
}
