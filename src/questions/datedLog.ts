import { isProblem, type Problem } from "../nouns/problem";
import type { PickDays } from "../ranges/pickDays";
import type { PickRanges } from "../ranges/pickRanges";
import { type PickLog, readPicks } from "../ranges/readPicks";
import { whereIs } from "../ranges/whereIs";

/** A log with certain dates of one season. */
export interface DatedLog extends PickLog {
  readonly days: PickDays;
  /** First and last day with a row of an owner, as Excel's numbers. */
  readonly first: number;
  readonly last: number;
}

/** Dates further apart than this are hardly of one season. */
const LONGEST_SEASON = 400;

/**
 * Reads a log whose dates matter.
 *
 * @returns readPicks' problems, no-picks, no-dates where none is certain, and two-seasons
 */
export function datedLog(given: PickRanges): DatedLog | Problem {
  const log = readPicks(given);
  if (isProblem(log)) return log;
  if (log.owners.ids.every((owner) => owner < 0)) return { problem: "no-picks", where: log.where };
  const { days } = log;
  const [first, last] = ends(log);
  if (days === null || first > last)
    return { problem: "no-dates", where: given.dates === null ? "dates" : whereIs(given.dates) };
  if (last - first > LONGEST_SEASON) return { problem: "two-seasons", days: last - first };
  return { ...log, days, first, last };
}

function ends({ owners, days }: PickLog): readonly [first: number, last: number] {
  let [first, last] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [row, serial] of (days?.serials ?? new Float64Array()).entries()) {
    if ((owners.ids[row] ?? -1) < 0 || Number.isNaN(serial)) continue;
    first = Math.min(first, serial);
    last = Math.max(last, serial);
  }
  return [first, last];
}
