import type { FWorksheet } from "@univerjs/preset-sheets-core";
import { holdsOurCall } from "../../holdsOurCall";
import type { CallCell } from "../../sheet";
import type { Grid } from "../grid";

/** Every formula that holds one of our calls: `Sheet.calls` of the practice sheet. */
export function ourCalls(grid: Grid): readonly CallCell[] {
  return grid.book
    .getSheets()
    .flatMap(formulasOf)
    .filter(({ formula }) => holdsOurCall(formula));
}

function formulasOf(sheet: FWorksheet): CallCell[] {
  return sheet
    .getDataRange()
    .getFormulas()
    .flatMap((row, down) => row.map((formula, across) => ({ formula, down, across })))
    .filter(({ formula }) => formula !== "")
    .map(({ formula, down, across }) => ({
      sheet: sheet.getSheetName(),
      address: sheet.getRange(down, across).getA1Notation(),
      formula,
    }));
}
