import type { Sheet } from "../sheet";
import { excelCalls } from "./excelCalls";
import { excelChanges } from "./excelChanges";
import { excelNotes, keepExcelNotes } from "./excelNotes";
import { excelSelection } from "./excelSelection";
import { excelTheme } from "./excelTheme";
import { inExcel } from "./inExcel";
import { readExcel } from "./readExcel";
import { writeExcel } from "./writeExcel";

/**
 * Excel as the pane's spreadsheet. Each request is one batch, bounded in time. What adds sheets is fetched when the
 * first one is added.
 */
export function excelSheet(): Sheet {
  return {
    selection: excelSelection,
    read: readExcel,
    onChange: excelChanges,
    write: writeExcel,
    add: async (sheet) => (await import("./addExcelSheet")).addExcelSheet(sheet),
    ownSheets: async () => (await own()).ownExcelSheets(),
    putOwn: async (sheet, over) => (await own()).putOwnExcelSheet(sheet, over),
    format: (sheet, address, format) =>
      inExcel(address, async (context) => {
        context.workbook.worksheets.getItem(sheet).getRange(address).numberFormat = [[format]];
        await context.sync();
      }),
    select: (sheet, address) =>
      inExcel(address, async (context) => {
        const worksheet = context.workbook.worksheets.getItem(sheet);
        worksheet.activate();
        worksheet.getRange(address).select();
        await context.sync();
      }),
    calls: excelCalls,
    notes: excelNotes,
    keepNotes: keepExcelNotes,
    theme: excelTheme,
  };
}

function own() {
  return import("./putOwnExcelSheet");
}
