import { type CellColumn, cellIn } from "./columnBelow";
import { isLostWord } from "./isLostWord";
import type { PickAmounts } from "./pickAmounts";

/** The rows of a log that say that their plant was lost, and the range in which the word stands. */
export type LostRows = ReadonlyMap<number, "amounts" | "lossNotes">;

/**
 * Where a log says that a plant was lost: in its amounts, or in a column beside them, since who notes "dead" among the
 * grams leaves the fruit empty.
 *
 * @param lossNotes the column beside, of which only lost-words are read; null where none is given
 * @param owners one number a row; a row of nobody, −1, loses nothing
 */
export function lostRows({ lost }: PickAmounts, lossNotes: CellColumn | null, owners: Int32Array): LostRows {
  const rows = new Map<number, "amounts" | "lossNotes">([...lost].map((row) => [row, "amounts"]));
  if (lossNotes === null) return rows;
  for (let row = 0; row < lossNotes.length; row++) {
    const cell = cellIn(lossNotes, row);
    if (typeof cell === "string" && (owners[row] ?? -1) >= 0 && !rows.has(row) && isLostWord(cell)) {
      rows.set(row, "lossNotes");
    }
  }
  return rows;
}

/** The amounts without the empty cells of those rows: nothing is missing where the word says why. */
export function withoutLost(amounts: PickAmounts, lost: LostRows): PickAmounts {
  const missing = [...amounts.missing].filter(([row, why]) => why !== "empty" || !lost.has(row));
  return { ...amounts, missing: new Map(missing) };
}
