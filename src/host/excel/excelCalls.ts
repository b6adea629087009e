import { holdsOurCall } from "../holdsOurCall";
import type { CallCell } from "../sheet";
import { patienceForMany } from "./answeredSoon";
import { inExcel } from "./inExcel";
import { usedFormulas } from "./usedFormulas";

/** All formulas of the workbook that name our namespace: `Sheet.calls` of Excel. */
export async function excelCalls(): Promise<readonly CallCell[]> {
  const formulas = await inExcel("", usedFormulas, patienceForMany);
  return formulas
    .filter(({ formula }) => holdsOurCall(formula))
    .map(({ sheet, address, formula }) => ({ sheet, address, formula }));
}
