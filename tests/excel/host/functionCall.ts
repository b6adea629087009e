import type { Cell } from "../../../src/nouns/cell";
import { type Area, wholeSheet } from "./area";
import type { FakeExcel } from "./fakeExcel";
import type { Outcome } from "./outcome";
import { contentOf, eachCell, locate, usedArea, type Workbook } from "./workbook";

/** What functions.json says of one worksheet function. */
export interface FunctionEntry {
  readonly id: string;
  readonly options: Readonly<Record<string, boolean>>;
  readonly parameters: readonly {
    readonly type?: string;
    readonly dimensionality?: string;
    readonly optional?: boolean;
  }[];
}

export interface FunctionsFile {
  readonly functions: readonly FunctionEntry[];
  readonly allowErrorForDataTypeAny?: boolean;
}

/** A range as an argument. */
export interface Reference {
  readonly ref: string;
}

export function ref(address: string): Reference {
  return { ref: address };
}

/** A call in a cell: the function's id, then its arguments; null or left out is an omitted one. */
export type CellCall = readonly [id: string, ...given: readonly unknown[]];

/** How this Excel hands calls over. */
export interface Handing {
  readonly file: FunctionsFile;
  /** What an empty cell arrives as. */
  readonly blank: 0 | null | "";
  readonly addresses: boolean;
}

let calls = 0;

/** Calculates cells in one recalculation, as Excel does: without asking us where functions.json forbids it. */
export function calculate(excel: FakeExcel, cells: readonly CellCall[], handing: Handing): Promise<Outcome[]> {
  const numbered = cells.map((call) => {
    calls += 1;
    return { number: calls, message: messageOf(call, excel.book, { ...handing, number: calls }) };
  });
  excel.invoke(numbered.flatMap(({ message }) => (typeof message === "string" ? [message] : [])));
  return Promise.all(
    numbered.map(({ number, message }) => (typeof message === "string" ? excel.outcome(number) : message)),
  );
}

function messageOf(
  [id, ...given]: CellCall,
  book: Workbook,
  { file, blank, addresses, number }: Handing & { readonly number: number },
): string | Outcome {
  const entry = file.functions.find((one) => one.id === id);
  if (entry === undefined) return { error: "#NAME?", sentence: "" };
  const values = entry.parameters.map(({ type, dimensionality }, at) => {
    const cells = cellsOf(given[at], book, blank);
    if (dimensionality === "matrix") return cells;
    return type === "string" ? textOf(cells) : (cells?.[0]?.[0] ?? null);
  });
  const faulty = file.allowErrorForDataTypeAny
    ? null
    : JSON.stringify(values).match(/CustomFunctionError","code":"([^"]+)/);
  if (faulty !== null) return { error: faulty[1] ?? "", sentence: "" };
  const told = addresses && entry.options.requiresParameterAddresses === true;
  const places = entry.parameters.map((_, at) => (isReference(given[at]) ? given[at].ref : null));
  return JSON.stringify([number, id, values, "Trial!Z99", 4, ...(told ? [places] : [])]);
}

function cellsOf(argument: unknown, book: Workbook, blank: unknown): unknown[][] | null {
  if (argument === null || argument === undefined) return null;
  if (!isReference(argument)) return Array.isArray(argument) ? argument : [[argument]];
  const [home = ""] = book.sheets.keys();
  const area = locate(book, argument.ref, home);
  if (area === null) return [[{ type: "CustomFunctionError", code: "#REF!" }]];
  return eachCell(trimmed(area, book), (cell) => handedOver(contentOf(book, cell).value, blank));
}

/** An argument that is declared to be a text arrives as one, an empty cell as "". */
function textOf(cells: unknown[][] | null): string | null {
  const cell = cells?.[0]?.[0];
  return cells === null ? null : String(cell === 0 || cell === null ? "" : cell);
}

/** Excel hands a whole column over as far as the sheet is used. */
function trimmed(area: Area, book: Workbook): Area {
  const used = usedArea(book, wholeSheet(area.sheet));
  return { ...area, rows: Math.min(area.rows, (used?.row ?? 0) + (used?.rows ?? 1) - area.row) };
}

function handedOver(value: Cell, blank: unknown): unknown {
  if (value === null) return blank;
  return typeof value === "object" ? { type: "CustomFunctionError", code: value.error } : value;
}

function isReference(argument: unknown): argument is Reference {
  return typeof argument === "object" && argument !== null && "ref" in argument;
}
