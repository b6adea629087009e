import type { Book } from "../../src/files/book";
import { readCsv } from "../../src/files/csv/readCsv";
import { isFileProblem } from "../../src/files/fileProblem";
import { openBook } from "../../src/files/open/openBook";
import { saveBook } from "../../src/files/save/saveBook";
import { answer } from "../../src/functions/answer";
import { excelFile, sheetPart } from "../files/excelFile";
import { knowing } from "../files/knowing";
import { contest, figure, heading } from "./report";

const fewest = 1_000;
const sizes = [10_000, 100_000] as const;
/** Growth no worse than linear, and a fifth for what the clock and the machine's memory add. */
const spare = 1.2;

/** Opening a grower's file up to its first answer, and saving a copy: how the time grows with the rows. */
export function workbookFiles(): void {
  heading("Workbook files");
  const small = jobs(fewest);
  for (const rows of sizes) {
    const target = { most: (spare * rows) / fewest };
    for (const [name, work] of Object.entries(jobs(rows))) {
      const rival = { name: `${name} ${fewest} rows`, work: small[name as keyof typeof small], target };
      const { ms } = contest(`${name} ${rows} rows`, work, [rival]);
      figure(`${name} ${rows} rows`, ms, "ms");
    }
  }
}

function jobs(rows: number) {
  const numbers = Array.from({ length: rows }, (_, at) => [100 + (at % 17), 120 + (at % 13)] as const);
  const cells = numbers.map(
    ([usual, other], at) =>
      `<row r="${at + 1}"><c r="A${at + 1}"><v>${usual}</v></c><c r="B${at + 1}"><v>${other}</v></c></row>`,
  );
  const bytes = excelFile({ sheets: [["S", sheetPart(cells.join(""))]] });
  const text = new TextEncoder().encode(numbers.map((row) => row.join(",")).join("\n"));
  const edited = withEdit(opened(bytes), rows - 1);
  return {
    "open and first answer": () => answer("UPDOWN", firstPlants(opened(bytes)), {}),
    "save a copy with one change": () => saveBook(bytes, edited, { knowing, onSheet: () => undefined }),
    "open .csv": () => readCsv(text, "S"),
  };
}

function opened(bytes: Uint8Array): Book {
  const found = openBook(bytes, knowing);
  if (isFileProblem(found)) throw new Error(found.problem);
  return found.book;
}

/** Eight plants of each of two columns. */
function firstPlants({ sheets }: Book): readonly unknown[][][] {
  const rows = [...(sheets[0]?.rows.values() ?? [])].slice(0, 8);
  return [0, 1].map((column) => rows.map((row) => [row.get(column)?.value]));
}

function withEdit(book: Book, row: number): Book {
  const sheets = book.sheets.map((sheet) => ({
    ...sheet,
    rows: new Map(sheet.rows).set(row, new Map([[0, { value: 5 }]])),
  }));
  return { ...book, sheets };
}
