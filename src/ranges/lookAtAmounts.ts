import type { Cell } from "../nouns/cell";
import { dayOf } from "../nouns/day";
import type { Remark } from "../nouns/reading";
import type { Unusable } from "../nouns/sample";
import { bothNumbers } from "./bothNumbers";
import { cellMeanings } from "./cellMeaning";
import { excelDates } from "./excelDates";
import { headingParts } from "./headingParts";
import { isNotRecordedWord } from "./isNotRecordedWord";
import type { Noted } from "./noted";
import { type SettledCell, type SettledColumn, settleUnits } from "./settleUnits";
import type { Unit } from "./unit";

/** A column of amounts as read, in one unit. */
export interface LookedAmounts {
  /** One number a row; NaN where there is none. */
  readonly values: Float64Array;
  readonly unit: Unit | null;
  readonly unitInHeading: boolean;
  readonly noted: readonly Noted[];
}

/**
 * Reads a column of amounts and notes every cell that is more or less than a plain number above 0.
 *
 * @param skip rows that are not looked at
 */
export function lookAtAmounts(
  cells: readonly Cell[],
  heading: string | null,
  skip: ReadonlySet<number>,
): LookedAmounts {
  const values = new Float64Array(cells.length).fill(Number.NaN);
  const rows: number[] = [];
  for (const [row, cell] of cells.entries()) {
    if (skip.has(row)) continue;
    if (typeof cell === "number" && Number.isFinite(cell)) values[row] = cell;
    else rows.push(row);
  }
  const named = heading === null ? null : headingParts(heading).unit;
  const split = { cells, rows, values };
  const settled = settleTyped(split, named);
  const noted = [...notedUnclear(values, settled), ...notedTyped(settled, split), ...notedPlain(settled, split)];
  return { values, unit: settled.unit, unitInHeading: named !== null, noted };
}

interface Split {
  readonly cells: readonly Cell[];
  /** The rows whose cells are no numbers. */
  readonly rows: readonly number[];
  readonly values: Float64Array;
}

/** Cells that are no numbers; bare numbers have a say in the unit only where one was typed. */
function settleTyped({ cells, rows, values }: Split, named: Unit | null): SettledColumn {
  const typed = cellMeanings(rows.map((row) => cells[row] ?? null));
  return settleUnits(
    typed,
    named,
    values.filter((value) => !Number.isNaN(value)),
  );
}

/** Numbers far from most amounts, which have a unit typed beside them. */
function notedUnclear(values: Float64Array, { isUnclear }: SettledColumn): readonly Noted[] {
  const noted: Noted[] = [];
  for (const [row, value] of values.entries()) {
    if (!isUnclear(value)) continue;
    values[row] = Number.NaN;
    noted.push({ row, remark: { kind: "unreadable", why: "unit-unclear" } });
  }
  return noted;
}

function notedTyped({ cells: settled, unit }: SettledColumn, { cells, rows, values }: Split): readonly Noted[] {
  return settled.flatMap((meaning, at): Noted[] => {
    const row = rows[at] ?? 0;
    if (meaning.means === "amount") values[row] = meaning.value;
    const remark = remarkOn(meaning, cells[row] ?? null, unit);
    return remark === null ? [] : [{ row, remark }];
  });
}

/** Null for a plain number in a text, which is looked at as one in a number cell. */
function remarkOn(meaning: SettledCell, cell: Cell, unit: Unit | null): Remark | null {
  if (meaning.means === "lost") return { kind: "lost" };
  if (meaning.means === "unusable") return unusable(meaning.why, cell);
  const { value, read } = meaning;
  switch (read) {
    case "number":
      return null;
    case "none-word":
      return { kind: "none-as-zero" };
    default:
      return { kind: read, amount: { value, unit } };
  }
}

function unusable(why: Unusable, cell: Cell): Remark {
  switch (why) {
    case "empty":
      return { kind: "not-recorded", why: "empty" };
    case "doubtful-number":
      return { kind: "unreadable", why, numbers: bothNumbers(String(cell)) };
    case "unit-unclear":
    case "true-or-false":
      return { kind: "unreadable", why };
    case "text":
      return textRemark(String(cell));
    default:
      return { kind: "error" };
  }
}

/** "forgot" says that nothing was recorded; any other note is one that cannot be read. */
function textRemark(text: string): Remark {
  return isNotRecordedWord(text) ? { kind: "not-recorded", why: "word" } : { kind: "unreadable", why: "text" };
}

/** Zeros, and plain numbers that look like dates Excel made, which are no amounts. */
function notedPlain({ cells: settled }: SettledColumn, { rows, values }: Split): readonly Noted[] {
  const readInto = new Set(rows.filter((_, at) => !isPlain(settled[at])));
  const noted: Noted[] = [];
  const isDate = excelDates(values);
  for (const [row, value] of values.entries()) {
    if ((value !== 0 && !isDate(value)) || readInto.has(row)) continue;
    if (value === 0) noted.push({ row, remark: ZERO });
    else {
      noted.push({ row, remark: { kind: "excel-date", day: dayOf(value) } });
      values[row] = Number.NaN;
    }
  }
  return noted;
}

function isPlain(cell: SettledCell | undefined): boolean {
  return cell?.means === "amount" && cell.read === "number";
}

const ZERO: Remark = { kind: "zero" };
