/** A cell that holds a formula. */
export interface FormulaCell {
  readonly sheet: string;
  readonly address: string;
  /** English names, commas. */
  readonly formula: string;
  /** What it shows; an error value as its text. */
  readonly value: unknown;
}

/** All formulas of the workbook. */
export async function usedFormulas(context: Excel.RequestContext): Promise<readonly FormulaCell[]> {
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const used = worksheets.items.map((sheet) => sheet.getUsedRangeOrNullObject());
  for (const range of used) range.load("formulas,values,rowIndex,columnIndex");
  await context.sync();
  return used.flatMap((range, at) => (range.isNullObject ? [] : formulasIn(range, worksheets.items[at]?.name ?? "")));
}

function formulasIn({ formulas, values, rowIndex, columnIndex }: Excel.Range, sheet: string): readonly FormulaCell[] {
  return formulas.flatMap((row: readonly unknown[], down) =>
    row.flatMap((content, across) => {
      const formula = String(content);
      const address = `${letters(columnIndex + across)}${rowIndex + down + 1}`;
      return formula.startsWith("=") ? [{ sheet, address, formula, value: values[down]?.[across] }] : [];
    }),
  );
}

/** A column's letters; columns count from 0. */
function letters(column: number): string {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : letters(Math.floor(column / 26) - 1) + last;
}
