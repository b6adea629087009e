import type { DatedPicks, Picks } from "./picks";

/** A row that holds the same as an earlier one. */
export interface RepeatedRow {
  readonly row: number;
  /** The first row that holds the same. */
  readonly like: number;
}

/**
 * Rows that repeat an earlier row: same owner, same known day, same known amount. In order of rows; empty where no days
 * are known.
 *
 * An open hash table over the rows' own numbers, with linear probing (Knuth, The Art of Computer Programming, volume 3,
 * 6.4), since a log of a hundred thousand rows has to be through in milliseconds.
 */
export function repeatedRows(picks: Picks): readonly RepeatedRow[] {
  const { owners, amounts, days } = picks;
  if (days === null) return [];
  const dated = { owners, amounts, days };
  const table = new Int32Array(2 ** Math.ceil(Math.log2(2 * owners.length + 2)));
  const repeated: RepeatedRow[] = [];
  // by index: an iterator takes several times as long for the 100 000 rows of a log
  for (let row = 0; row < owners.length; row++) {
    if ((owners[row] as number) < 0 || Number.isNaN(amounts[row]) || Number.isNaN(days[row])) continue;
    const like = findOrAdd(table, dated, row);
    if (like >= 0) repeated.push({ row, like });
  }
  return repeated;
}

/** The first row like this one, or −1 after noting this one. Slots hold row numbers from 1; 0 is free. */
function findOrAdd(table: Int32Array, picks: DatedPicks, row: number): number {
  const mask = table.length - 1;
  for (let slot = hash(picks, row) & mask; ; slot = (slot + 1) & mask) {
    const there = (table[slot] ?? 0) - 1;
    if (there < 0) {
      table[slot] = row + 1;
      return -1;
    }
    if (isSame(picks, there, row)) return there;
  }
}

function hash({ owners, amounts, days }: DatedPicks, row: number): number {
  const amount = ((amounts[row] ?? 0) * 1024) | 0;
  const mixed = Math.imul((owners[row] ?? 0) + 1, 0x9e3779b1) ^ Math.imul((days[row] ?? 0) | 0, 0x85ebca6b) ^ amount;
  const spread = Math.imul(mixed ^ (mixed >>> 15), 0xc2b2ae35);
  return (spread ^ (spread >>> 13)) >>> 0;
}

function isSame({ owners, amounts, days }: DatedPicks, one: number, other: number): boolean {
  return owners[one] === owners[other] && days[one] === days[other] && amounts[one] === amounts[other];
}
