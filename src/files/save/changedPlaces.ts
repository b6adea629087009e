import { fileFormula, holdsOurs } from "../formulas/fileFormula";
import type { StoredFormula } from "../open/storedFormulas";
import { addressOf } from "../xml/address";
import { type effectiveCells, sameCell } from "./effectiveCells";

/** Cells by row and column. */
export type Cells = ReturnType<typeof effectiveCells>;

/** Columns by row. */
export type Places = Map<number, Set<number>>;

/** How the formulas stand in the file. */
interface Stored {
  readonly formulas: ReadonlyMap<string, StoredFormula>;
  /** Ids of our functions, in capitals. */
  readonly own: ReadonlySet<string>;
}

/** Where a sheet's cells must be written: what has changed, and our calls that are not in Excel's form. */
export function changedPlaces(before: Cells, now: Cells, stored: Stored): Places {
  const places: Places = new Map();
  for (const row of new Set([...before.keys(), ...now.keys()])) {
    const [was, is] = [before.get(row), now.get(row)];
    const columns = [...new Set([...(was?.keys() ?? []), ...(is?.keys() ?? [])])].filter((column) => {
      const cell = is?.get(column);
      return !sameCell(was?.get(column), cell) || isMisshapen(cell?.formula, addressOf({ row, column }), stored);
    });
    if (columns.length > 0) places.set(row, new Set(columns));
  }
  return places;
}

function isMisshapen(formula: string | undefined, address: string, { formulas, own }: Stored): boolean {
  if (formula === undefined || !holdsOurs(formula)) return false;
  return fileFormula(formula, own) !== formulas.get(address)?.text;
}
