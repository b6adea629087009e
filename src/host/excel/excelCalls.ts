import { holdsOurCall } from "../holdsOurCall";
import type { CallCell } from "../sheet";
import { inExcel } from "./inExcel";
import { usedFormulas } from "./usedFormulas";

/** All formulas of the workbook that name our namespace: `Sheet.calls` of Excel. */
export function excelCalls(): Promise<readonly CallCell[]> {
  return inExcel("", async (context) => {
    const formulas = await usedFormulas(context);
    const ours = formulas.filter(({ formula }) => holdsOurCall(formula));
    return ours.map(({ sheet, address, formula }) => ({ sheet, address, formula }));
  });
}
