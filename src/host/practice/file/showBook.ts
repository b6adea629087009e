import type { Book } from "../../../files/book";
import type { Grid } from "../grid";
import { gridWorkbook } from "./gridWorkbook";
import { withoutEnding } from "./withoutEnding";

let shown = 0;

/**
 * Puts a workbook into the grid, in place of the one that is there. Resolves when its results stand in the cells.
 *
 * @param file the name of the file it came from: "Harvest.xlsx"
 */
export async function showBook(grid: Grid, book: Book, file: string): Promise<void> {
  const before = grid.book.getId();
  shown += 1;
  grid.api.createWorkbook(gridWorkbook(book, `file-${shown}`, withoutEnding(file)));
  grid.api.disposeUnit(before);
  for (const { name, reference } of book.names) grid.book.insertDefinedName(name, reference);
  const first = book.sheets.findIndex(({ hidden }) => !hidden);
  const sheet = grid.book.getSheets()[Math.max(0, first)];
  if (sheet !== undefined) grid.book.setActiveSheet(sheet).getRange("A1").activate();
  const calculated = grid.api.getFormula().onCalculationResultApplied();
  grid.api.getFormula().executeCalculation();
  await calculated;
}
