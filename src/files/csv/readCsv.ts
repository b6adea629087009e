import type { Cell } from "../../nouns/cell";
import type { Book, BookCell, Look } from "../book";
import type { FileProblem } from "../fileProblem";
import { mostCells } from "../mostCells";
import { limits } from "../zip/openPackage";
import { csvRows, type Field, type Separator, separatorOf } from "./csvRows";

/** The look of a date written 2026-05-03. */
const looks: readonly Look[] = [{}, { pattern: "yyyy-mm-dd" }];
const megabyte = 1_000_000;
/** A log repeats few texts: so many of them are read once only, and share one cell. */
const mostRemembered = 10_000;
const dayLength = 86_400_000;
/** Day 0 of serials from March 1900 on. */
const firstDay = Date.UTC(1899, 11, 30);

/**
 * Reads a table of text (RFC 4180; also with semicolons or tabs, and then with decimal commas). Plain numbers become
 * numbers, days written 2026-05-03 become dates; everything else stays the text that it is: a text that starts with
 * "=" is no formula, and an apostrophe that guards such a text is taken off. So does a number that may be a thousand
 * times larger ("1.250" beside decimal commas): whoever reads the cell can list it as doubtful.
 *
 * @param name of the sheet
 */
export function readCsv(bytes: Uint8Array, name: string): Book | FileProblem {
  if (bytes.length === 0) return { problem: "empty-file" };
  if (bytes.length > limits.packed * megabyte) {
    return { problem: "too-large", megabytes: Math.round(bytes.length / megabyte), limit: limits.packed };
  }
  const text = decoded(bytes);
  if (text === undefined) return { problem: "not-text" };
  const separator = separatorOf(text);
  const rows = new Map<number, Map<number, BookCell>>();
  const cellOf = cellReader(separator);
  let [row, cells] = [0, 0];
  for (const fields of csvRows(text, separator)) {
    const filled = filledCells(fields, cellOf);
    cells += filled.size;
    if (filled.size > 0) rows.set(row, filled);
    row += 1;
  }
  if (cells > mostCells) return { problem: "too-many-cells", cells, limit: mostCells };
  return { sheets: [{ name, hidden: false, rows, merges: [], widths: new Map() }], looks, names: [] };
}

/** UTF-8, or what spreadsheets of old wrote in western Europe; a file with zero bytes is no text. */
function decoded(bytes: Uint8Array): string | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes.includes(0)) return undefined;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

function cellReader(separator: Separator): (field: Field) => BookCell {
  const remembered = new Map<string, BookCell>();
  return (field) => {
    if (field.quoted) return csvCell(field, separator);
    const known = remembered.get(field.text);
    if (known !== undefined) return known;
    const cell = csvCell(field, separator);
    if (remembered.size < mostRemembered) remembered.set(field.text, cell);
    return cell;
  };
}

function filledCells(fields: readonly Field[], cellOf: (field: Field) => BookCell): Map<number, BookCell> {
  const filled = new Map<number, BookCell>();
  for (const [column, field] of fields.entries()) {
    const cell = cellOf(field);
    if (cell.value !== null) filled.set(column, cell);
  }
  return filled;
}

function csvCell({ text, quoted }: Field, separator: Separator): BookCell {
  if (quoted) return { value: unguarded(text) };
  const day = dayOf(text);
  if (day !== undefined) return { value: day, look: 1 };
  return { value: numberOf(text, separator) ?? unguarded(text) };
}

/** A comma is a decimal sign only where it does not part the cells. */
function numberOf(text: string, separator: Separator): number | undefined {
  const typed = text.trim();
  if (doubtful[separator].test(typed)) return undefined;
  const plain = separator === "," ? typed : typed.replace(",", ".");
  return /^[-+]?(?:0|[1-9]\d{0,14})(?:\.\d+)?(?:e[-+]?\d{1,3})?$/i.test(plain) ? Number(plain) : undefined;
}

/**
 * Three digits behind the sign that may part thousands: the point where semicolons make room for decimal commas, the
 * comma beside tabs, which make room for either. A comma between commas stands in quotes, and so is a text.
 */
const doubtful: Readonly<Record<Separator, RegExp>> = {
  ",": /^$/,
  ";": /^[-+]?[1-9]\d{0,2}\.\d{3}$/,
  "\t": /^[-+]?[1-9]\d{0,2},\d{3}$/,
};

function dayOf(text: string): number | undefined {
  const found = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text.trim());
  if (found === null) return undefined;
  const [year, month, day] = found.slice(1).map(Number) as [number, number, number];
  const moment = new Date(Date.UTC(year, month - 1, day));
  const real = moment.getUTCMonth() === month - 1 && moment.getUTCDate() === day && year > 1900;
  return real ? (moment.getTime() - firstDay) / dayLength : undefined;
}

/** A sign alone ("-" for none) is no formula, and is never guarded. */
function unguarded(text: string): Cell {
  if (text === "") return null;
  return /^'+[=+\-@\t\r][\s\S]/.test(text) ? text.slice(1) : text;
}
