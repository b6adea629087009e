import type { Sheet } from "../sheet";
import { addExcelSheet } from "./addExcelSheet";
import { excelCalls } from "./excelCalls";
import { excelChanges } from "./excelChanges";
import { excelNotes, keepExcelNotes } from "./excelNotes";
import { excelSelection } from "./excelSelection";
import { excelTheme } from "./excelTheme";
import { inExcel } from "./inExcel";
import { readExcel } from "./readExcel";
import { writeExcel } from "./writeExcel";

/** Excel as the pane's spreadsheet. Each request is one batch, bounded in time. */
export function excelSheet(): Sheet {
  return {
    selection: excelSelection,
    read: readExcel,
    onChange: excelChanges,
    write: writeExcel,
    add: addExcelSheet,
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
