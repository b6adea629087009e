import type { FWorksheet } from "@univerjs/preset-sheets-core";
import type { Grid } from "../grid";
import { trouble } from "./trouble";

/** The sheet of that name in any letter case, as in a formula. Throws the record "no-such-range" when there is none. */
export function sheetNamed(grid: Grid, name: string): FWorksheet {
  const wanted = name.toLowerCase();
  const found = grid.book.getSheets().find((sheet) => sheet.getSheetName().toLowerCase() === wanted);
  if (found === undefined) throw trouble("no-such-range", name);
  return found;
}
