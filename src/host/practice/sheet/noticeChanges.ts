import { SetFormulaCalculationResultMutation } from "@univerjs/engine-formula";
import { SetSelectionsOperation, SetWorksheetActiveOperation } from "@univerjs/preset-sheets-core";
import type { Grid } from "../grid";

const telling: ReadonlySet<string> = new Set([
  SetSelectionsOperation.id,
  SetWorksheetActiveOperation.id,
  SetFormulaCalculationResultMutation.id,
]);

/**
 * Calls back after the selection moved (also by arrow keys, which the grid's own selection event leaves out), a cell
 * changed (also by undo), or results came in: `Sheet.onChange` of the practice sheet. What happens in one go is
 * told once.
 */
export function noticeChanges(grid: Grid, notice: () => void): () => void {
  let waiting = 0;
  const listening = grid.api.addEvent(grid.api.Event.CommandExecuted, ({ id }) => {
    if (waiting !== 0 || !(telling.has(id) || id.startsWith("sheet.mutation."))) return;
    waiting = window.setTimeout(() => {
      waiting = 0;
      notice();
    });
  });
  return () => {
    listening.dispose();
    window.clearTimeout(waiting);
  };
}
