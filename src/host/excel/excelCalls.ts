import { inExcel } from "./inExcel";
import { usedFormulas } from "./usedFormulas";

/** A formula with one of our calls, and where it stands. */
export interface ExcelCall {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
}

/** All formulas of the workbook that name our namespace. */
export function excelCalls(): Promise<readonly ExcelCall[]> {
  return inExcel("", async (context) => {
    const formulas = await usedFormulas(context);
    const ours = formulas.filter(({ formula }) => /\bfairbed\./i.test(formula));
    return ours.map(({ sheet, address, formula }) => ({ sheet, address, formula }));
  });
}
