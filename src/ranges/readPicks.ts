import { isEmpty } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { Place } from "../nouns/place";
import { isProblem, type Problem } from "../nouns/problem";
import { widthOf } from "./cellsOf";
import { cellText } from "./cellText";
import { type CellColumn, cellIn, columnBelow } from "./columnBelow";
import { headingOf } from "./headingOf";
import { headingParts } from "./headingParts";
import { isTotalLabel } from "./isTotalLabel";
import { labelKey } from "./labelKey";
import { type LostRows, lostRows, withoutLost } from "./lostRows";
import { type PickAmounts, readPickAmounts } from "./pickAmounts";
import { type PickDays, readPickDays } from "./pickDays";
import { type PickLabels, readPickLabels } from "./pickLabels";
import type { LogRanges, PickRanges } from "./pickRanges";
import { picksSwapped } from "./picksSwapped";
import { placeOf } from "./placeOf";
import { plainLabel } from "./plainLabel";
import { readDate } from "./readDate";
import { sameShape } from "./sameShape";
import { totalLabels } from "./totalLabels";
import { trimTogether } from "./trimTogether";
import { whereIs } from "./whereIs";

/** The ranges whose cells are spoken of one by one. */
export type LogColumn = "owners" | "amounts" | "dates" | "lossNotes";

/** One cell as a note names it. */
export interface CellSeen {
  readonly place: Place;
  readonly text: string;
}

/** A pick log as read. Rows count from 0 below the heading; those of no owner have the owner −1. */
export interface PickLog {
  readonly owners: PickLabels;
  /** The heading above the owners, if there is one. */
  readonly ownersHeading: string | null;
  /** Where the owners' range stands, for sentences. */
  readonly where: string;
  readonly besides: readonly (PickLabels | null)[];
  readonly days: PickDays | null;
  readonly amounts: PickAmounts;
  /** Rows that say that their plant was lost, and the range in which the word stands. */
  readonly lost: LostRows;
  /** Filled rows without an owner's label. */
  readonly unlabelled: readonly number[];
  /** Rows whose label names a total or an average. */
  readonly totalRows: readonly number[];
  /** A row's cell of a range: where it stands, and what it holds. */
  readonly cellAt: (column: LogColumn, row: number) => CellSeen;
}

/**
 * Reads a pick log by METHODS 3 and 4.1, cell i of all ranges together. Empty rows are passed over; rows without an
 * owner's label, and rows of totals and averages, are left out and listed.
 *
 * The first row is a heading when the amount in it is one, unless a date stands beside it or its owner comes again.
 *
 * @returns a Problem for ranges of different size or that look swapped, for a number below zero, and for units that
 *   do not go together
 */
export function readPicks(given: PickRanges): PickLog | Problem {
  const ranges = trimmed(given);
  const problem = shapesDiffer(ranges) ?? picksSwapped(ranges);
  if (problem !== null) return problem;
  const heading = hasHeading(ranges) ? 1 : 0;
  const below = (range: CellRange): CellColumn => columnBelow(range, heading);
  const owners = readPickLabels(below(ranges.owners), given.ownerKind);
  const totalRows = takeOutTotals(owners);
  const amounts = readPickAmounts(below(ranges.amounts), {
    counts: (row) => (owners.ids[row] ?? -1) >= 0,
    headingUnit: heading === 0 ? null : unitAbove(ranges.amounts),
    unit: given.unit,
    zerosVerified: ranges.amounts.zerosVerified,
  });
  if (isProblem(amounts)) return amounts;
  const lost = lostRows(amounts, ranges.lossNotes && below(ranges.lossNotes), owners.ids);
  const negative = firstNegative(amounts.values);
  if (negative >= 0) {
    const place = placeOf(ranges.amounts, negative + heading);
    return { problem: "negative-amount", place, given: amounts.values[negative] ?? 0 };
  }
  return {
    owners,
    ownersHeading: heading === 0 ? null : plainLabel(cellIn(ranges.owners.cells, 0)),
    where: whereIs(ranges.owners),
    besides: ranges.besides.map((range) => range && readPickLabels(below(range), "name")),
    days: ranges.dates && readPickDays(below(ranges.dates), given.start),
    amounts: withoutLost(amounts, lost),
    lost,
    unlabelled: unlabelledRows(ranges, owners, { heading, totalRows }),
    totalRows,
    cellAt: (column, row) => cellSeen(ranges[column] ?? ranges.owners, row + heading),
  };
}

function firstNegative(values: Float64Array): number {
  for (let row = 0; row < values.length; row++) if ((values[row] ?? 0) < 0) return row;
  return -1;
}

function cellSeen(range: CellRange, index: number): CellSeen {
  const width = widthOf(range);
  const cell = range.cells[Math.floor(index / width)]?.[index % width] ?? null;
  return { place: placeOf(range, index), text: cellText(cell).trim() };
}

function trimmed({ owners, ownerKind, amounts, dates, lossNotes, besides }: PickRanges): LogRanges {
  const given = [owners, amounts, dates, lossNotes, ...besides].filter(isGiven);
  const cut = trimTogether(given);
  const cutOf = (range: CellRange): CellRange => cut[given.indexOf(range)] ?? range;
  return {
    owners: cutOf(owners),
    ownerKind,
    amounts: cutOf(amounts),
    dates: dates && cutOf(dates),
    lossNotes: lossNotes && cutOf(lossNotes),
    besides: besides.map((range) => range && cutOf(range)),
  };
}

function isGiven(range: CellRange | null): range is CellRange {
  return range !== null;
}

function shapesDiffer({ owners, amounts, dates, lossNotes, besides }: LogRanges): Problem | null {
  for (const range of [owners, dates, lossNotes, ...besides]) {
    const problem = range && sameShape(amounts, range);
    if (problem) return problem;
  }
  return null;
}

function hasHeading({ owners, ownerKind, amounts, dates }: LogRanges): boolean {
  if (headingOf(cellIn(amounts.cells, 0)) === null) return false;
  if (dates !== null && readDate(cellIn(dates.cells, 0)).means !== "no-date") return false;
  const first = plainLabel(cellIn(owners.cells, 0));
  if (first === null) return true;
  const key = labelKey(first, ownerKind);
  return !readPickLabels(columnBelow(owners, 1), ownerKind).names.some((name) => labelKey(name, ownerKind) === key);
}

function unitAbove(amounts: CellRange): ReturnType<typeof headingParts>["unit"] {
  return headingParts(headingOf(cellIn(amounts.cells, 0)) ?? "").unit;
}

/** Rows of totals lose their owner; their label stays among the names, which no row has any more. */
function takeOutTotals({ names, ids }: PickLabels): readonly number[] {
  if (!names.some(isTotalLabel)) return [];
  const uses = new Map<string, number>();
  for (const id of ids) {
    const name = names[id];
    if (name !== undefined) uses.set(name, (uses.get(name) ?? 0) + 1);
  }
  const totals = totalLabels(uses, ids.filter((id) => id >= 0).length);
  const rows: number[] = [];
  for (const [row, id] of ids.entries()) {
    if (!totals.has(names[id] ?? "")) continue;
    rows.push(row);
    ids[row] = -1;
  }
  return rows;
}

/** Rows without a label that are not empty in every range. */
function unlabelledRows(
  { owners, amounts, dates, lossNotes, besides }: LogRanges,
  { ids }: PickLabels,
  { heading, totalRows }: { readonly heading: number; readonly totalRows: readonly number[] },
): readonly number[] {
  const without: number[] = [];
  for (let row = 0; row < ids.length; row++) if ((ids[row] ?? -1) < 0) without.push(row);
  if (without.length === 0) return [];
  const totals = new Set(totalRows);
  const columns = [owners, amounts, dates, lossNotes, ...besides]
    .filter(isGiven)
    .map((range) => columnBelow(range, heading));
  return without.filter((row) => !totals.has(row) && columns.some((cells) => !isEmpty(cellIn(cells, row))));
}
