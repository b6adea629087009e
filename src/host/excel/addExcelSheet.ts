import { freeSheetName } from "../freeSheetName";
import type { NewCell, NewSheet, PlacedCells } from "../newSheet";
import type { SheetTrouble } from "../sheet";
import { patienceForMany } from "./answeredSoon";
import { inExcel } from "./inExcel";

/** Excel measures columns in points, three quarters of a pixel. */
const pointsPerPixel = 0.75;

/**
 * Adds a sheet with its cells: `Sheet.add` of Excel. A sheet that could not be filled is taken away again, so that
 * nothing half-made is left.
 *
 * @param furnish asks for what else is to be on the sheet, once its cells are written
 */
export async function addExcelSheet(wanted: NewSheet, furnish: (sheet: Excel.Worksheet) => void = () => {}) {
  const name = await nameFor(wanted);
  await addNamed(name);
  try {
    await inExcel(
      name,
      async (context) => {
        const sheet = context.workbook.worksheets.getItem(name);
        fill(sheet, wanted);
        furnish(sheet);
        sheet.activate();
        await context.sync();
      },
      patienceForMany,
    );
  } catch (reason) {
    await takeAway(name);
    throw reason;
  }
  return name;
}

/** Takes a sheet of ours away again; rejects with "half-made" when it stays. */
export async function takeAway(name: string): Promise<void> {
  try {
    await inExcel(name, async (context) => {
      context.workbook.worksheets.getItem(name).delete();
      await context.sync();
    });
  } catch {
    const trouble: SheetTrouble = { trouble: "half-made", where: name };
    throw trouble;
  }
}

function nameFor(wanted: NewSheet): Promise<string> {
  return inExcel(wanted.name, async (context) => {
    const sheets = context.workbook.worksheets;
    sheets.load("items/name");
    await context.sync();
    return freeSheetName(
      wanted.name,
      sheets.items.map((sheet) => sheet.name),
    );
  });
}

/** Where no sheet may be added, it is the workbook that is protected. */
function addNamed(name: string): Promise<void> {
  return inExcel(
    "The workbook",
    async (context) => {
      context.workbook.worksheets.add(name);
      await context.sync();
    },
    patienceForMany,
  );
}

function fill(sheet: Excel.Worksheet, { blocks, widths }: NewSheet): void {
  for (const [at, width] of widths.entries()) {
    sheet.getRangeByIndexes(0, at, 1, 1).getEntireColumn().format.columnWidth = width * pointsPerPixel;
  }
  for (const block of blocks) fillBlock(sheet, block);
}

function fillBlock(sheet: Excel.Worksheet, { address, rows }: PlacedCells): void {
  const corner = sheet.getRange(address);
  const block = corner.getResizedRange(rows.length - 1, (rows[0]?.length ?? 1) - 1);
  // The format first: a cell formatted as text would keep a formula as text.
  block.numberFormat = rows.map((row) => row.map((cell) => cell?.format ?? "General"));
  block.formulas = rows.map((row) => row.map(typed));
  for (const [down, row] of rows.entries()) {
    for (const [across, cell] of row.entries()) {
      if (cell?.bold) corner.getOffsetRange(down, across).format.font.bold = true;
    }
  }
}

/** As it is typed: an apostrophe keeps a text a text. */
function typed(cell: NewCell | null): string | number {
  if (cell === null) return "";
  return cell.kind === "text" ? `'${cell.content}` : cell.content;
}
