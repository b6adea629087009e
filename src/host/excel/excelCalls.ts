import { inExcel } from "./inExcel";

/** A formula with one of our calls, and where it stands. */
export interface ExcelCall {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
}

/** All formulas of the workbook that name our namespace. */
export function excelCalls(): Promise<readonly ExcelCall[]> {
  return inExcel("", async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject());
    for (const range of used) range.load("formulas,rowIndex,columnIndex");
    await context.sync();
    return used.flatMap((range, at) => (range.isNullObject ? [] : callsIn(range, worksheets.items[at]?.name ?? "")));
  });
}

function callsIn({ formulas, rowIndex, columnIndex }: Excel.Range, sheet: string): readonly ExcelCall[] {
  return formulas.flatMap((row: readonly unknown[], down) =>
    row.flatMap((content, across) => {
      const formula = String(content);
      const ours = formula.startsWith("=") && /\bfairbed\./i.test(formula);
      return ours ? [{ sheet, address: `${letters(columnIndex + across)}${rowIndex + down + 1}`, formula }] : [];
    }),
  );
}

/** A column's letters; columns count from 0. */
function letters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : letters(Math.floor(column / 26) - 1) + last;
}
