import type { Cell } from "../../../src/nouns/cell";
import { type Area, areaOf } from "./area";

/** What stands in one cell. */
export interface Content {
  /** What the cell shows; null when nothing stands in it. */
  readonly value: Cell;
  /** In English with commas; "" when the value was typed. */
  readonly formula: string;
  readonly format: string;
  readonly bold: boolean;
}

/** A chart as it was asked for: what was set, by its path ("title/text"). */
export interface Chart {
  readonly sheet: string;
  readonly type: string;
  /** Address of its figures, with the sheet. */
  readonly source: string;
  readonly set: Map<string, unknown>;
}

/** A workbook in memory: what the fake host's Excel has open. Tests change it as a grower would. */
export interface Workbook {
  readonly sheets: Map<string, Map<string, Content>>;
  /** A defined name's address, by its name; by "Trial!Straw" for a name that only that sheet knows. */
  readonly names: Map<string, string>;
  readonly protectedSheets: Set<string>;
  /** True: no sheet may be added or removed. */
  structureProtected: boolean;
  /** What Excel refuses just now, of what is asked for while a sheet is made or put in another's place. */
  readonly refused: Set<"chart" | "delete" | "rename" | "page">;
  /** Addresses of the tables, with their sheets. */
  readonly tables: string[];
  /** Tables that a grower made, by their names. */
  readonly namedTables: Map<string, Area>;
  readonly charts: Chart[];
  /** Names of the sheets that print as wide as a page. */
  readonly onePageWide: Set<string>;
  /** Widths of whole columns in points, by address. */
  readonly widths: Map<string, number>;
  /** The cells that a formula's table reaches, by the formula's own cell: "Trial!C5". */
  readonly spills: Map<string, Area>;
  /** References that getRange refuses. */
  readonly unreadable: Set<string>;
  /** The document's settings that Excel keeps for this add-in: texts of JSON, by name. */
  readonly settings: Map<string, string>;
  /** True: Excel does not take settings, as in a file that may not be changed. */
  settingsRefused: boolean;
  /** What is selected: one block, several, or a chart. */
  selected: readonly Area[] | "chart";
  /** True while the grower types in a cell: Excel then refuses every request. */
  editing: boolean;
}

const nothing: Content = { value: null, formula: "", format: "General", bold: false };

/** A workbook of sheets filled from A1 on; null leaves a cell empty, a text that starts with "=" is a formula. */
export function workbook(sheets: Readonly<Record<string, readonly (readonly Cell[])[]>>): Workbook {
  const [home = ""] = Object.keys(sheets);
  const book: Workbook = {
    sheets: new Map(Object.keys(sheets).map((name) => [name, new Map()])),
    names: new Map(),
    protectedSheets: new Set(),
    structureProtected: false,
    refused: new Set(),
    tables: [],
    namedTables: new Map(),
    charts: [],
    onePageWide: new Set(),
    widths: new Map(),
    spills: new Map(),
    unreadable: new Set(),
    settings: new Map(),
    settingsRefused: false,
    selected: [{ sheet: home, row: 0, column: 0, rows: 1, columns: 1 }],
    editing: false,
  };
  for (const [sheet, rows] of Object.entries(sheets)) fill(book, { sheet, row: 0, column: 0 }, rows);
  return book;
}

/** Types values and formulas from a first cell to the right and down. */
export function fill(
  book: Workbook,
  corner: Pick<Area, "sheet" | "row" | "column">,
  rows: readonly (readonly Cell[])[],
): void {
  for (const [down, row] of rows.entries()) {
    for (const [across, typed] of row.entries()) {
      const isFormula = typeof typed === "string" && typed.startsWith("=");
      const value = typeof typed === "string" ? typed.replace(/^'/, "") : typed;
      const content = isFormula ? { formula: typed, value: { error: "#BUSY!" } } : { formula: "", value };
      change(book, { ...corner, row: corner.row + down, column: corner.column + across }, content);
    }
  }
}

/** What stands in a cell. */
export function contentOf(book: Workbook, { sheet, row, column }: Pick<Area, "sheet" | "row" | "column">): Content {
  return book.sheets.get(sheet)?.get(`${row},${column}`) ?? nothing;
}

/** Changes part of what stands in a cell. */
export function change(book: Workbook, at: Pick<Area, "sheet" | "row" | "column">, part: Partial<Content>): void {
  book.sheets.get(at.sheet)?.set(`${at.row},${at.column}`, { ...contentOf(book, at), ...part });
}

/** The area of an address, a defined name or a table's column; null for none, and for a sheet that is not there. */
export function locate(book: Workbook, reference: string, home: string): Area | null {
  if (book.unreadable.has(reference)) return null;
  const address = book.names.get(`${home}!${reference}`) ?? book.names.get(reference) ?? reference;
  const area = columnOfTable(book, reference) ?? areaOf(address, home);
  return area !== null && book.sheets.has(area.sheet) ? area : null;
}

/** "Plants[Grams]": a column of a table below its heading. */
function columnOfTable(book: Workbook, reference: string): Area | null {
  const [, table = "", heading] = /^(\w+)\[(.+)\]$/.exec(reference) ?? [];
  const area = book.namedTables.get(table);
  if (area === undefined) return null;
  const [headings = []] = eachCell({ ...area, rows: 1 }, (cell) => contentOf(book, cell).value);
  const at = headings.indexOf(heading ?? null);
  return at < 0 ? null : { ...area, row: area.row + 1, rows: area.rows - 1, column: area.column + at, columns: 1 };
}

/** The smallest block that holds every cell of an area in which something stands; null where nothing does. */
export function usedArea(book: Workbook, { sheet, row, column, rows, columns }: Area): Area | null {
  const within = (spot: readonly number[]) => {
    const [down, across] = [(spot[0] ?? 0) - row, (spot[1] ?? 0) - column];
    return down >= 0 && down < rows && across >= 0 && across < columns;
  };
  const spots = [...(book.sheets.get(sheet) ?? [])]
    .filter(([, { value, formula }]) => value !== null || formula !== "")
    .map(([key]) => key.split(",").map(Number))
    .filter(within);
  if (spots.length === 0) return null;
  const [down, across] = [spots.map(([at = 0]) => at), spots.map(([, at = 0]) => at)];
  const [top, left] = [Math.min(...down), Math.min(...across)];
  return { sheet, row: top, column: left, rows: Math.max(...down) + 1 - top, columns: Math.max(...across) + 1 - left };
}

/** One entry for each cell of a block, row by row. */
export function eachCell<Found>(area: Area, of: (cell: Area) => Found): Found[][] {
  return Array.from({ length: area.rows }, (_, down) =>
    Array.from({ length: area.columns }, (_, across) =>
      of({ sheet: area.sheet, row: area.row + down, column: area.column + across, rows: 1, columns: 1 }),
    ),
  );
}
