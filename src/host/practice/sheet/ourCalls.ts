import type { FWorksheet } from "@univerjs/preset-sheets-core";
import type { Grid } from "../grid";

/** One formula of the workbook. */
export interface FormulaCell {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
}

/** Every formula that holds one of our calls: `Sheet.calls` of the practice sheet. */
export function ourCalls(grid: Grid): readonly FormulaCell[] {
  return grid.book
    .getSheets()
    .flatMap(formulasOf)
    .filter(({ formula }) => /\bFAIRBED\./i.test(formula));
}

function formulasOf(sheet: FWorksheet): FormulaCell[] {
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
