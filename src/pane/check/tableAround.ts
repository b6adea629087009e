import { quotedSheet } from "../../formula/quoted";
import type { Selection, Sheet } from "../../host/sheet";
import { isEmpty } from "../../nouns/cell";
import { addressOf, beyond, firstSpot } from "../address";

/** So many columns on either side are looked at. */
const reach = 26;
/** Two tables below each other stand at least so many empty rows apart; one empty row is a spacer. */
const apart = 2;

/**
 * The table that a cell stands in: the columns round it without an empty one between, down to where two rows are empty.
 *
 * @returns its address, "A1:G332"; null where nothing stands round the cell. Rejects with the port's troubles.
 */
export async function tableAround({ sheet, address }: Selection, port: Sheet): Promise<string | null> {
  const { row, column } = firstSpot(address);
  const on = quotedSheet(sheet);
  // The rows down to the cell tell how far the sheet is in use to the right; no column beyond may be asked for.
  const above = await port.read(`${on}!1:${row}`, sheet);
  const left = Math.max(1, column - reach);
  const right = Math.min(column + reach, above.cells[0]?.length ?? 1);
  if (right < column) return null;
  const { cells, corner } = await port.read(`${on}!${lettersOf(left)}:${lettersOf(right)}`, sheet);
  const width = cells[0]?.length ?? 0;
  const blankColumns = Array.from({ length: width }, (_, at) => cells.every((line) => isEmpty(line[at])));
  const across = runAround(blankColumns, column - corner.column, 1);
  if (across === null) return null;
  const [first, last] = across;
  const blankRows = cells.map((line) => line.slice(first, last + 1).every(isEmpty));
  const down = runAround(blankRows, row - corner.row, apart);
  if (down === null) return null;
  const [top, bottom] = down;
  const start = beyond(corner, top, first);
  return `${addressOf(start)}:${addressOf(beyond(start, bottom - top, last - first))}`;
}

function lettersOf(column: number): string {
  return addressOf({ row: 1, column }).replace(/\d+$/, "");
}

/** The places round `at` up to where `most` blank ones follow each other; null where nothing stands there. */
function runAround(blank: readonly boolean[], at: number, most: number): readonly [number, number] | null {
  if (blank[at] === undefined || (most === 1 && blank[at])) return null;
  const [first, last] = [walk(blank, { at, most, step: -1 }), walk(blank, { at, most, step: 1 })];
  return blank[first] || blank[last] ? null : [first, last];
}

/** The last place that is not blank, one way from `at`; `at` itself where there is none. */
function walk(
  blank: readonly boolean[],
  { at, most, step }: { readonly at: number; readonly most: number; readonly step: 1 | -1 },
): number {
  let last = at;
  let blanks = blank[at] ? 1 : 0;
  for (let next = at + step; blank[next] !== undefined && blanks < most; next += step) {
    blanks = blank[next] ? blanks + 1 : 0;
    if (blanks === 0) last = next;
  }
  return last;
}
