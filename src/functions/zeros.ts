import { type Blankness, blanksToldApart, noteBlanksToldApart } from "../host/blanks";

/** One argument as the host handed it over. */
export interface Raw {
  readonly value: unknown;
  /** "Trial!B2:B9"; null for a typed value, an expression, or a host that does not say. */
  readonly address: string | null;
}

/** Whether any of an argument's cells is a zero, which may be an empty cell. */
export function holdsZero({ value }: Raw): boolean {
  return cellsOf(value).some((row) => row.some(isZero));
}

/**
 * Takes notice of a range that holds null, which no host sends for a cell with something in it: this host tells blanks
 * apart. A single value may be null because it was left out, and "" may be the result of a formula.
 */
export function noticeBlanks({ value, address }: Raw): void {
  if (!Array.isArray(value) || blanksToldApart()) return;
  const isOneCell = value.length === 1 && !(Array.isArray(value[0]) && value[0].length > 1);
  if ((address !== null || !isOneCell) && value.some(isOrHoldsNull)) noteBlanksToldApart();
}

/** The argument with null where a zero came and the sheet says that the cell is empty. */
export function withBlanks({ value, address }: Raw, blankness: Blankness): Raw {
  const cells = cellsOf(value);
  const apart = cells.some((row, down) =>
    row.some((cell, across) => cell === "" && blankness(down, across) === "empty"),
  );
  if (apart) noteBlanksToldApart();
  const restored = cells.map((row, down) =>
    row.map((cell, across) => (isZero(cell) && blankness(down, across) !== "filled" ? null : cell)),
  );
  return { value: Array.isArray(value) ? restored : restored[0]?.[0], address };
}

/** Of a row, or of one cell. */
function isOrHoldsNull(row: unknown): boolean {
  if (!Array.isArray(row)) return row === null;
  // an empty column of a hundred thousand rows is looked through at every call
  for (let at = 0; at < row.length; at++) if (row[at] === null) return true;
  return false;
}

function cellsOf(value: unknown): unknown[][] {
  return Array.isArray(value) ? value.map((row) => (Array.isArray(row) ? row : [row])) : [[value]];
}

/** A zero as it is, or in the wrapping of a formatted number. */
function isZero(cell: unknown): boolean {
  return (
    cell === 0 || (typeof cell === "object" && cell !== null && (cell as { basicValue?: unknown }).basicValue === 0)
  );
}
