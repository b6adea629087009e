import { randomSource } from "../../src/numerics/random";
import type { Case } from "./experiment";

/** How often each thing happened in so many trials. */
export interface Tally {
  readonly trials: number;
  readonly counts: Readonly<Record<string, number>>;
}

/** Some of a case's trials: those of the slice numbered so. */
export interface Slice {
  readonly number: number;
  readonly trials: number;
}

/**
 * Simulates a slice of a case. The same name and slice give the same trials on every machine, in whatever order slices
 * are run.
 *
 * @param name unlike any other case's
 */
export function tallySlice(name: string, { experiment }: Case, { number, trials }: Slice): Tally {
  const source = randomSource(fingerprint(name) * 2 ** 16 + number);
  const counts: Record<string, number> = {};
  for (let trial = 0; trial < trials; trial += 1) {
    for (const event of experiment(source)) counts[event] = (counts[event] ?? 0) + 1;
  }
  return { trials, counts };
}

/** Both tallies together. */
export function together(one: Tally, other: Tally): Tally {
  const counts: Record<string, number> = { ...one.counts };
  for (const [event, count] of Object.entries(other.counts)) counts[event] = (counts[event] ?? 0) + count;
  return { trials: one.trials + other.trials, counts };
}

export const nothing: Tally = { trials: 0, counts: {} };

/**
 * A number of 32 bits from a text.
 *
 * Source: Fowler, Noll & Vo, FNV-1a (IETF draft-eastlake-fnv), over UTF-16 units.
 */
function fingerprint(text: string): number {
  let hash = 0x811c9dc5;
  for (const letter of text) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193) >>> 0;
  return hash;
}
