import { ScrollToRangeOperation } from "@univerjs/preset-sheets-core";
import type { Sheet } from "../../sheet";
import type { Grid } from "../grid";
import { addSheet } from "./addSheet";
import { noticeChanges } from "./noticeChanges";
import { ourCalls } from "./ourCalls";
import { keepPracticeNotes, practiceNotes } from "./practiceNotes";
import { presentSelection } from "./presentSelection";
import { ownSheets, putOwnSheet } from "./putOwnSheet";
import { rangeOfReference } from "./rangeOfReference";
import { readReference } from "./readReference";
import { writeEntries } from "./writeEntries";

/**
 * The practice sheet behind the port that Excel answers too.
 *
 * @param isDark whether the page is dark now
 */
export function practiceSheet(grid: Grid, isDark: () => boolean): Sheet {
  return {
    selection: async () => presentSelection(grid),
    read: async (reference, home) => readReference(grid, reference, home),
    onChange: (notice) => noticeChanges(grid, notice),
    write: async (entries, over) => writeEntries(grid, entries, over),
    add: async (sheet) => addSheet(grid, sheet),
    ownSheets: async () => ownSheets(grid),
    putOwn: async (sheet, over) => putOwnSheet(grid, sheet, over),
    format: async (sheet, address, format) => {
      const { sheet: onSheet, top, left } = rangeOfReference(grid, address, sheet);
      onSheet.getRange(top, left).setNumberFormat(format);
    },
    select: async (sheet, address) => {
      const { sheet: onSheet, top, left } = rangeOfReference(grid, address, sheet);
      grid.book.setActiveSheet(onSheet);
      const cell = onSheet.getRange(top, left).activate();
      await grid.api.executeCommand(ScrollToRangeOperation.id, { range: cell.getRange() });
    },
    calls: async () => ourCalls(grid),
    notes: async () => practiceNotes(grid),
    keepNotes: async (notes) => keepPracticeNotes(grid, notes),
    theme: () => ({ dark: isDark() }),
  };
}
