import { serializeRange } from "@univerjs/engine-formula";
import type { Selection } from "../../sheet";
import type { Grid } from "../grid";
import { cellAt } from "./cellAt";
import { trouble } from "./trouble";

/** What is selected now: `Sheet.selection` of the practice sheet. A merged cell answers with its top-left cell. */
export function presentSelection(grid: Grid): Selection {
  const sheet = grid.book.getActiveSheet();
  const areas = sheet.getSelection()?.getActiveRangeList() ?? [];
  const [area] = areas;
  if (area === undefined) throw trouble("not-cells", sheet.getSheetName());
  if (areas.length > 1) throw trouble("several-areas", areas.map((one) => one.getA1Notation()).join(","));
  const range = area.getRange();
  const { startRow: row, startColumn: column } = range;
  const first = sheet.getRange(row, column);
  const formula = first.getFormula();
  return {
    sheet: sheet.getSheetName(),
    address: serializeRange(area.isMerged() ? first.getRange() : range),
    formula,
    formulaShown: formula,
    value: cellAt(grid, sheet)(row, column),
    numberFormat: first.getNumberFormat() || "General",
  };
}
