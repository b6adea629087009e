import type { Book } from "./book";
import { readCsv } from "./csv/readCsv";
import { writeCsv } from "./csv/writeCsv";
import { type FileProblem, isFileProblem } from "./fileProblem";
import { fileSentence } from "./fileSentence";
import { openBook } from "./open/openBook";
import { tiedParts } from "./open/tiedParts";
import { saveBook } from "./save/saveBook";

/** What the grid works out, as it crosses to a worker. */
export interface GridFunctions {
  /** Ids of our functions: "COMPARETWO". */
  readonly own: readonly string[];
  /** All functions that the grid works out, ours with "FAIRBED.". */
  readonly known: readonly string[];
}

/** What a worker is asked to do with a file. */
export type FileJob =
  | { readonly job: "open"; readonly name: string; readonly bytes: Uint8Array; readonly functions: GridFunctions }
  | {
      readonly job: "save";
      readonly original: Uint8Array | null;
      readonly book: Book;
      readonly functions: GridFunctions;
    }
  | { readonly job: "csv"; readonly book: Book; readonly sheet: string };

/** What a worker tells while it works, and when it is done. */
export type FileReport =
  | { readonly report: "progress"; readonly done: number; readonly of: number }
  | {
      readonly report: "opened";
      readonly book: Book;
      /** Formulas that show their last result and stay as they are: "Plan!B7". */
      readonly leftAlone: readonly string[];
      /** What would no longer fit if rows or columns were inserted, in a grower's words. */
      readonly tied: readonly string[];
    }
  | { readonly report: "saved"; readonly bytes: Uint8Array<ArrayBuffer>; readonly onlyValues: readonly string[] }
  | { readonly report: "refused"; readonly sentence: string };

/**
 * Does one job with a file.
 *
 * @param tell hears of the sheets that are done
 */
export function doFileJob(job: FileJob, tell: (report: FileReport) => void): FileReport {
  const onSheet = (done: number, of: number) => tell({ report: "progress", done, of });
  if (job.job === "csv") return csv(job.book, job.sheet);
  const knowing = { own: capitals(job.functions.own), known: capitals(job.functions.known) };
  if (job.job === "save") {
    const saved = saveBook(job.original, job.book, { knowing, onSheet });
    return isFileProblem(saved) ? refused(saved) : { report: "saved", ...saved };
  }
  if (/\.(csv|txt|tsv)$/i.test(job.name)) {
    const book = readCsv(job.bytes, sheetName(job.name));
    return isFileProblem(book) ? refused(book) : { report: "opened", book, leftAlone: [], tied: [] };
  }
  const opened = openBook(job.bytes, knowing, onSheet);
  if (isFileProblem(opened)) return refused(opened);
  const { book, leftAlone, source } = opened;
  return { report: "opened", book, leftAlone, tied: tiedParts(source, leftAlone) };
}

function csv(book: Book, name: string): FileReport {
  const sheet = book.sheets.find((one) => one.name === name);
  if (sheet === undefined) throw new Error(`no sheet ${name}`);
  return { report: "saved", bytes: writeCsv(sheet, book.looks), onlyValues: [] };
}

function refused(problem: FileProblem): FileReport {
  return { report: "refused", sentence: fileSentence(problem) };
}

/** A file's name as a sheet may be called: Excel takes 31 characters, and not all signs. */
function sheetName(file: string): string {
  const plain = file.replace(/\.\w+$/, "").replaceAll(/[\\/?*[\]:']/g, " ");
  return plain.slice(0, 31).trim() || "Table";
}

function capitals(names: readonly string[]): ReadonlySet<string> {
  return new Set(names.map((name) => name.toUpperCase()));
}
