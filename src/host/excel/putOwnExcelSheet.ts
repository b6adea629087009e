import { freeMark, type OwnSheet } from "../ownSheet";
import { addExcelSheet, takeAway } from "./addExcelSheet";
import { excelMarks, type OwnExcelSheet } from "./excelMarks";
import { furnishExcelSheet } from "./furnishExcelSheet";
import { inExcel } from "./inExcel";

/** `Sheet.ownSheets` of Excel. */
export async function ownExcelSheets(): Promise<readonly string[]> {
  return (await excelMarks()).sheets.map(({ sheet }) => sheet);
}

/**
 * `Sheet.putOwn` of Excel. The new sheet is whole before the old one is touched: until then a failure takes the new one
 * away, and afterwards there is nothing left to lose.
 */
export async function putOwnExcelSheet(wanted: OwnSheet, over: string | null): Promise<string> {
  const { sheets, stale } = await excelMarks();
  const old = sheets.find(({ sheet }) => sheet === over);
  const mark = freeMark([...sheets.map((one) => one.mark), ...stale]);
  const name = await addExcelSheet(wanted, (sheet) => {
    furnishExcelSheet(sheet, wanted);
    sheet.context.workbook.names.add(mark, sheet.getRange("A1"), "Fairbed writes this sheet anew when it is asked to.");
  });
  await triedTo(name, ({ worksheets }) => toPrint(worksheets.getItem(name)));
  return old === undefined ? name : inPlaceOf(old, name);
}

/** Answers with the name that the new sheet has in the end. */
async function inPlaceOf({ sheet: old, mark, place }: OwnExcelSheet, name: string): Promise<string> {
  try {
    await removed(old);
  } catch (reason) {
    // Only when the old one is known to be there still may the new one go.
    if (await isThere(old)) {
      await takeAway(name);
      throw reason;
    }
  }
  const final = (await triedTo(old, (workbook) => moved(workbook.worksheets.getItem(name), old, place))) ? old : name;
  // A mark that cannot be removed points at no sheet, and counts as none.
  await triedTo(mark, (workbook) => workbook.names.getItemOrNullObject(mark).delete());
  return final;
}

/** As wide as a page. A computer without a printer may refuse that. */
function toPrint({ pageLayout }: Excel.Worksheet): void {
  pageLayout.orientation = "Landscape";
  pageLayout.zoom = { horizontalFitToPages: 1 };
}

function removed(sheet: string): Promise<void> {
  return inExcel(sheet, async (context) => {
    context.workbook.worksheets.getItem(sheet).delete();
    await context.sync();
  });
}

function isThere(sheet: string): Promise<boolean> {
  return inExcel(sheet, async (context) => {
    const found = context.workbook.worksheets.getItemOrNullObject(sheet);
    found.load("name");
    await context.sync();
    return !found.isNullObject;
  });
}

function moved(sheet: Excel.Worksheet, wanted: string, place: number): void {
  sheet.position = place;
  sheet.name = wanted;
}

/** For what may fail without harm. */
async function triedTo(where: string, ask: (workbook: Excel.Workbook) => void): Promise<boolean> {
  try {
    await inExcel(where, async (context) => {
      ask(context.workbook);
      await context.sync();
    });
    return true;
  } catch {
    return false;
  }
}
