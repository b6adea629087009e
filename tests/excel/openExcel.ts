import { afterEach } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { built } from "../platform/built";
import { type FakeExcel, fakeExcel } from "./host/fakeExcel";
import { type CellCall, calculate, type FunctionsFile, type Handing } from "./host/functionCall";
import { declaredSets, officeInNode } from "./host/officeInNode";
import type { Outcome } from "./host/outcome";
import { workbook } from "./host/workbook";

/** The list of our functions that Excel reads, as built. */
export const functionsFile: FunctionsFile = JSON.parse(built("functions.json"));

/** A fake Excel that runs the built functions under the real office.js. */
export interface OpenedExcel {
  readonly excel: FakeExcel;
  /** What cells with these calls show after one recalculation. */
  readonly calculate: (...cells: readonly CellCall[]) => Promise<readonly Outcome[]>;
  /** Runs a script in the page, as Excel's own scripts could. */
  readonly run: (script: string) => unknown;
}

const opened: (() => void)[] = [];

afterEach(() => {
  for (const close of opened.splice(0)) close();
});

/**
 * Opens a workbook for one test.
 *
 * @param sheets cells from A1 on by the sheet's name; null is an empty cell
 * @param handing how this Excel hands cells over; a 2025 desktop when left out, which hands over empty cells as 0.
 *   `sets`: the requirement sets that it has; those of the manifest when left out
 */
export async function openExcel(
  sheets: Readonly<Record<string, readonly (readonly Cell[])[]>>,
  { sets = declaredSets, ...handing }: Partial<Handing> & { readonly sets?: Readonly<Record<string, string>> } = {},
): Promise<OpenedExcel> {
  const excel = fakeExcel(workbook(sheets));
  const page = await officeInNode(excel, sets);
  opened.push(page.close);
  page.run(built("functions.js"));
  const all: Handing = { file: functionsFile, blank: 0, addresses: true, ...handing };
  return { excel, calculate: (...cells) => calculate(excel, cells, all), run: page.run };
}

/** Columns of cells side by side, as a sheet's rows. */
export function sideBySide(...columns: readonly (readonly Cell[])[]): Cell[][] {
  const rows = Math.max(...columns.map(({ length }) => length));
  return Array.from({ length: rows }, (_, row) => columns.map((column) => column[row] ?? null));
}
