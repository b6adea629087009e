import { SSF } from "@e965/xlsx";
import type { Book, BookSheet, Look } from "../book";
import { type FileProblem, isFileProblem } from "../fileProblem";
import type { Knowing } from "../knowing";
import { mostCells } from "../mostCells";
import { textOf } from "../xml/parts";
import { openPackage, type Package } from "../zip/openPackage";
import { themeColours } from "./colours";
import { readSheet, type SheetReading } from "./readSheet";
import { readStyles } from "./readStyles";
import { type WorkbookPart, workbookPart } from "./workbookPart";

/** A workbook as read from a file. */
export interface Opened {
  readonly book: Book;
  /** Formulas that the grid shows by their last result and leaves alone: "Plan!B7". */
  readonly leftAlone: readonly string[];
  /** What the reading found out that the writing needs. */
  readonly source: Source;
}

/** The file behind a workbook. */
export interface Source {
  readonly parts: Package;
  readonly workbook: WorkbookPart;
  readonly sheets: readonly SheetReading[];
  readonly looks: readonly Look[];
}

/**
 * Reads a workbook from an .xlsx or .xlsm file. Nothing that the file points at outside itself is asked for, and none
 * of its programs run.
 *
 * @param onSheet is told how many sheets have been read, and of how many
 */
export function openBook(
  bytes: Uint8Array,
  knowing: Knowing,
  onSheet: (read: number, of: number) => void = () => {},
): Opened | FileProblem {
  const parts = openPackage(bytes);
  if (isFileProblem(parts)) return parts;
  const workbook = workbookPart(parts);
  if (workbook === undefined) return { problem: "damaged" };
  const cells = countCells(parts, workbook);
  if (cells > mostCells) return { problem: "too-many-cells", cells, limit: mostCells };
  try {
    return readBook({ parts, workbook }, knowing, onSheet);
  } catch {
    return { problem: "damaged" };
  }
}

/** Counted before anything is read: a sheet that is too large must not fill the computer's memory first. */
function countCells(parts: Package, { sheets }: WorkbookPart): number {
  const counts = sheets.map(({ path }) => textOf(parts, path).split(/<(?:\w+:)?c[\s/>]/).length - 1);
  return counts.reduce((sum, count) => sum + count, 0);
}

function readBook(
  { parts, workbook }: Pick<Source, "parts" | "workbook">,
  knowing: Knowing,
  onSheet: (read: number, of: number) => void,
): Opened {
  const theme = themeColours(workbook.theme === undefined ? "" : textOf(parts, workbook.theme));
  const looks = readStyles(workbook.styles === undefined ? "" : textOf(parts, workbook.styles), theme);
  const dates = new Set(
    looks.flatMap(({ pattern }, at) => (pattern !== undefined && SSF.is_date(pattern) ? [at] : [])),
  );
  const file = { parts, workbook, dates, knowing };
  const sheets = workbook.sheets.map((entry, at) => {
    const reading = readSheet(entry, file);
    onSheet(at + 1, workbook.sheets.length);
    return reading;
  });
  return {
    book: { sheets: sheets.map(({ sheet }): BookSheet => sheet), looks, names: workbook.names },
    leftAlone: sheets.flatMap(({ leftAlone }) => leftAlone),
    source: { parts, workbook, sheets, looks },
  };
}
