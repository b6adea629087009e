import { dateCell, type NewCell, numberCell, textCell } from "../../../host/newSheet";
import { type Cell, isErrorCell } from "../../../nouns/cell";
import type { ReadColumn } from "../../../nouns/findings/lookedOver";
import { NEEDS_A_LOOK, type Reading } from "../../../nouns/reading";
import { dayText } from "../../../words/dayText";
import { readingAdvice } from "../../../words/readingAdvice";
import { type Change, LEFT_AS_IT_STANDS } from "./change";

/** A cell of a table that was looked over. */
export interface LookedCell {
  readonly cell: Cell;
  /** What its column was read as; null for a column of notes. */
  readonly kind: ReadColumn["kind"] | null;
  /** The amount or the day that was read in it for certain; NaN for neither. */
  readonly value: number;
  readonly readings: readonly Reading[];
  /** What an empty date or name stands for, if the grower said that it does. */
  readonly above: NewCell | null;
}

/** What stands for it in the clean copy. */
export interface CleanCell {
  readonly cell: NewCell | null;
  /** True for a plain number or date that was typed as a text. */
  readonly typedAsText: boolean;
  /** What is to be told of it. */
  readonly told: readonly Omit<Change, "where">[];
}

/**
 * A cell of the clean copy: what was read for certain, and anything else as it stands, with what is to be done about
 * it. Texts stay texts, whatever they look like.
 */
export function cleanCell(looked: LookedCell): CleanCell {
  const { cell, kind, above, readings } = looked;
  const was = cellShown(cell);
  if (was === "" && above !== null && (kind === "date" || kind === "label")) {
    const became = newCellShown(above);
    return { cell: above, typedAsText: false, told: [{ was: "empty", became, why: "You said: as above." }] };
  }
  const clean = readInto(looked);
  const became = newCellShown(clean);
  const sure = readings.find((reading) => !isDoubtful(reading));
  const why = sure === undefined ? "Written as it was read." : readingAdvice(sure, kind ?? "label");
  const read = became === was || clean?.content === cell ? [] : [{ was, became, why }];
  const doubts = readings.filter(isDoubtful).map((reading) => ({
    was: was || "empty",
    became: LEFT_AS_IT_STANDS,
    why: readingAdvice(reading, kind ?? "label"),
  }));
  const isPlain = clean?.kind === "number" || clean?.kind === "date";
  return {
    cell: clean,
    typedAsText: isPlain && typeof cell === "string" && became === was,
    told: [...read, ...doubts],
  };
}

function readInto({ cell, kind, value, readings }: LookedCell): NewCell | null {
  if (Number.isFinite(value)) return kind === "date" ? day(cell, value) : numberCell(value);
  const other = readings.find((reading) => reading.kind === "names-alike" && reading.same);
  if (other?.kind === "names-alike") return textCell(other.like);
  if (cell === null || cell === "") return null;
  return typeof cell === "number" ? numberCell(cell) : textCell(cellShown(cell));
}

/** A number of the sheet may hold a time of day as well; it stays. */
function day(cell: Cell, value: number): NewCell {
  return dateCell(typeof cell === "number" && Math.floor(cell) === value ? cell : value);
}

/** A name in another spelling is one name to all functions; any other reading that needs a look is in doubt. */
function isDoubtful(reading: Reading): boolean {
  if (reading.kind === "names-alike") return !reading.same;
  return NEEDS_A_LOOK.some((kind) => kind === reading.kind);
}

/** A cell as it reads in the sheet, spaces round it aside. */
export function cellShown(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "boolean") return String(cell).toUpperCase();
  return isErrorCell(cell) ? cell.error : String(cell).trim();
}

function newCellShown(cell: NewCell | null): string {
  if (cell === null) return "";
  return cell.kind === "date" ? dayText(Math.floor(Number(cell.content)), true) : String(cell.content);
}
