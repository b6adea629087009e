import type { Cell } from "../../nouns/cell";
import type { Area, BookCell, BookSheet } from "../book";
import { gridFormula } from "../formulas/gridFormula";
import { isLive } from "../formulas/isLive";
import type { Knowing } from "../knowing";
import { mostCells } from "../mostCells";
import { addressOf, areaOf } from "../xml/address";
import { textOf } from "../xml/parts";
import { attribute, element, elements, unescaped } from "../xml/xml";
import type { Package } from "../zip/openPackage";
import { columnWidths } from "./columnWidths";
import { type CellMark, type RowMark, type SheetScan, scanSheet } from "./scanSheet";
import { sheetValues } from "./sheetValues";
import { type StoredFormula, storedFormulas } from "./storedFormulas";
import type { SheetEntry, WorkbookPart } from "./workbookPart";

/** A sheet as read, and where its cells stand in its part. */
export interface SheetReading {
  readonly entry: SheetEntry;
  readonly xml: string;
  readonly scan: SheetScan;
  /** The rows' texts by their number. */
  readonly marks: ReadonlyMap<number, RowMark>;
  readonly formulas: ReadonlyMap<string, StoredFormula>;
  readonly sheet: BookSheet;
  /** "Plan!B7" */
  readonly leftAlone: readonly string[];
}

/** The file that a sheet is part of. */
interface File {
  readonly parts: Package;
  readonly workbook: WorkbookPart;
  /** Numbers of the styles that show dates. */
  readonly dates: ReadonlySet<number>;
  readonly knowing: Knowing;
}

/** Days between the two first days that Excel's dates count from. */
export const days1904 = 1462;

/** What the cells of one sheet are read with. */
interface Reading {
  readonly formulas: ReadonlyMap<string, StoredFormula>;
  readonly value: (mark: CellMark) => Cell;
  readonly at: (row: number, column: number) => Cell;
  readonly knowing: Knowing;
}

/** Reads one sheet. Throws where its parts cannot be read. */
export function readSheet(entry: SheetEntry, { parts, workbook, dates, knowing }: File): SheetReading {
  const xml = textOf(parts, entry.path);
  const scan = scanSheet(xml);
  if (scan === undefined) throw new Error("a sheet without cells");
  const strings = workbook.strings === undefined ? undefined : parts.get(workbook.strings);
  const values = sheetValues(parts.get(entry.path) ?? new Uint8Array(), strings);
  const marks = new Map(scan.rows.map((row) => [row.row, row]));
  const value = (mark: CellMark): Cell => {
    const found = textOrError(mark) ?? values(mark.row, mark.column);
    return workbook.from1904 && typeof found === "number" && dates.has(mark.style) ? found + days1904 : found;
  };
  const formulas = storedFormulas(scan);
  const at = (row: number, column: number) => {
    const mark = marks.get(row)?.cells.find((cell) => cell.column === column);
    return mark === undefined ? null : value(mark);
  };
  const { rows, leftAlone } = cellsOf(scan, { formulas, value, at, knowing });
  return {
    entry,
    xml,
    scan,
    marks,
    formulas,
    sheet: { name: entry.name, hidden: entry.hidden, rows, merges: mergesIn(xml), widths: columnWidths(xml) },
    leftAlone: leftAlone.map((address) => `${entry.name}!${address}`),
  };
}

/** What the reader of values does not tell as it stands: a formula's text, and an error. */
function textOrError({ attributes, inner }: CellMark): Cell {
  const kind = /\st\s*=\s*["'](str|e)["']/.exec(attributes)?.[1];
  if (kind === undefined) return null;
  const value = unescaped(element(inner, "v")?.inner ?? "");
  if (value === "") return null;
  return kind === "e" ? { error: value } : value;
}

function cellsOf(scan: SheetScan, reading: Reading) {
  const rows = new Map<number, Map<number, BookCell>>();
  const leftAlone: string[] = [];
  const filled = filledByOthers(reading);
  for (const mark of scan.rows.flatMap(({ cells }) => cells)) {
    const address = addressOf(mark);
    const stored = reading.formulas.get(address);
    const cell = filled.has(address) ? look(mark) : bookCell(mark, stored, reading);
    if (stored !== undefined && cell.formula === undefined) leftAlone.push(address);
    if (Object.keys(cell).length === 1 && cell.value === null) continue;
    const row = rows.get(mark.row) ?? new Map<number, BookCell>();
    rows.set(mark.row, row.set(mark.column, cell));
  }
  return { rows, leftAlone };
}

function look({ style }: CellMark): BookCell {
  return style === 0 ? { value: null } : { value: null, look: style };
}

function bookCell(mark: CellMark, stored: StoredFormula | undefined, reading: Reading): BookCell {
  const plain = { ...look(mark), value: reading.value(mark) };
  if (stored === undefined) return plain;
  const formula = gridFormula(stored.text, reading.knowing.own);
  if (!isLive(formula, reading.knowing.known)) return plain;
  return { ...plain, formula, ...spilled(stored.fills, reading) };
}

function spilled(fills: Area | undefined, { at }: Reading): Pick<BookCell, "spill"> {
  if (fills === undefined || (fills.top === fills.bottom && fills.left === fills.right)) return {};
  const { top, left, bottom, right } = fills;
  const spill = Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across) => at(top + down, left + across)),
  );
  return { spill };
}

/**
 * Cells that a live formula of another cell fills: they hold nothing of their own. Throws where the blocks together
 * would be larger than the cells of any file that is read: each cell of a block stands in its file.
 */
function filledByOthers({ formulas, knowing }: Reading): ReadonlySet<string> {
  const filled = new Set<string>();
  let cells = 0;
  for (const [address, { text, fills }] of formulas) {
    if (fills === undefined || !isLive(gridFormula(text, knowing.own), knowing.known)) continue;
    cells += (fills.bottom - fills.top + 1) * (fills.right - fills.left + 1);
    if (cells > mostCells) throw new Error("formulas fill more cells than a file may hold");
    for (let row = fills.top; row <= fills.bottom; row++) {
      for (let column = fills.left; column <= fills.right; column++) filled.add(addressOf({ row, column }));
    }
    filled.delete(address);
  }
  return filled;
}

function mergesIn(xml: string): readonly Area[] {
  return elements(element(xml, "mergeCells")?.inner ?? "", "mergeCell")
    .map(({ attributes }) => areaOf(attribute(attributes, "ref") ?? ""))
    .filter((block) => block !== undefined);
}
