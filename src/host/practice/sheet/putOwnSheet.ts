import type { FWorksheet } from "@univerjs/preset-sheets-core";
import { freeMark, isMark, numberOfMark, type OwnSheet } from "../../ownSheet";
import type { Grid } from "../grid";
import { addSheet } from "./addSheet";
import { furnishedSheet } from "./furnishedSheet";
import { rangeOfReference } from "./rangeOfReference";
import { sheetNamed } from "./sheetNamed";

/** A sheet of ours, and the name of the workbook's that marks it. */
interface Marked {
  readonly sheet: FWorksheet;
  readonly mark: string;
}

/** `Sheet.ownSheets` of the practice sheet. */
export function ownSheets(grid: Grid): readonly string[] {
  return markedSheets(grid).map(({ sheet }) => sheet.getSheetName());
}

/** `Sheet.putOwn` of the practice sheet: the new sheet stands before the old one is taken away. */
export function putOwnSheet(grid: Grid, wanted: OwnSheet, over: string | null): string {
  const old = markedSheets(grid).find(({ sheet }) => sheet.getSheetName() === over);
  const index = old === undefined ? {} : { index: old.sheet.getIndex() + 1 };
  const name = addSheet(grid, wanted, { ...index, furnished: (sheet) => furnishedSheet(sheet, wanted) });
  const marks = grid.book.getDefinedNames().map((defined) => defined.getName());
  grid.book.insertDefinedName(freeMark(marks.filter(isMark)), `'${name.replaceAll("'", "''")}'!$A$1`);
  return old === undefined ? name : inPlaceOf(grid, old, name);
}

/** A sheet of an opened file stays, since its copy could not lose it: then it is ours no more, and both stand. */
function inPlaceOf(grid: Grid, { sheet, mark }: Marked, name: string): string {
  const [id, wanted] = [sheet.getSheetId(), sheet.getSheetName()];
  grid.book.deleteSheet(sheet);
  grid.book.deleteDefinedName(mark);
  if (grid.book.getSheetBySheetId(id) !== null) return name;
  sheetNamed(grid, name).setName(wanted);
  return wanted;
}

/** The newest last. A name whose sheet is gone marks nothing. */
function markedSheets(grid: Grid): readonly Marked[] {
  const marks = grid.book.getDefinedNames().map((defined) => ({
    mark: defined.getName(),
    reference: defined.getFormulaOrRefString().replace(/^=/, ""),
  }));
  return marks
    .filter(({ mark }) => isMark(mark))
    .sort((one, other) => numberOfMark(one.mark) - numberOfMark(other.mark))
    .flatMap(({ mark, reference }) => {
      const sheet = sheetOf(grid, reference);
      return sheet === null ? [] : [{ mark, sheet }];
    });
}

function sheetOf(grid: Grid, reference: string): FWorksheet | null {
  try {
    return rangeOfReference(grid, reference, "").sheet;
  } catch {
    return null;
  }
}
