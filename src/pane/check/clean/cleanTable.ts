import type { NewCell } from "../../../host/newSheet";
import { type Cell, isEmpty } from "../../../nouns/cell";
import type { LookedOver, ReadColumn } from "../../../nouns/findings/lookedOver";
import type { Reading } from "../../../nouns/reading";
import { counted } from "../../../words/counted";
import { readingAdvice } from "../../../words/readingAdvice";
import type { LookedAt } from "../lookedAt";
import { type Change, LEFT_OUT } from "./change";
import { type CleanCell, cellShown, cleanCell } from "./cleanCell";
import { type CleanHeading, cleanHeading } from "./cleanHeading";

/** A column of a clean copy. */
export interface CleanColumn {
  readonly heading: string;
  /** What it was read as; null for notes. */
  readonly kind: ReadColumn["kind"] | null;
}

/** A table with one thing in a cell, and all that was done for it. */
export interface CleanTable {
  readonly columns: readonly CleanColumn[];
  readonly rows: readonly (readonly (NewCell | null)[])[];
  /** What was changed, and what is in doubt and was left as it stands: headings first, then row by row. */
  readonly changes: readonly Change[];
}

/** What the grower settles before a copy is made. */
export interface CleanRules {
  /** Whether an empty date or name stands for the one above it, as in merged cells. */
  readonly blankIsAbove: boolean;
  /** The name of a cell for the list; row and column count from 1 within the cells looked at. */
  readonly nameOf: (row: number, column: number) => string;
}

/**
 * The clean copy of a table that was looked over. What LOOKOVER read for certain is written as the number, day or name
 * that it is; nothing in doubt is guessed: it stands as it stood, and is listed with what is to be done. Empty rows,
 * and rows whose label says total or average, are left out and listed.
 */
export function cleanTable({ range, found }: Pick<LookedAt, "range" | "found">, rules: CleanRules): CleanTable {
  const kept = keptColumns(range.cells, found);
  const readings = byRow(found.readings);
  const rows: (readonly (NewCell | null)[])[] = [];
  const changes: Change[] = [...headingChanges(kept, rules)];
  const typed = kept.map(() => 0);
  for (const [at, cells] of range.cells.entries()) {
    const inRow = readings.get(at + 1) ?? [];
    const out = inRow.find(isLeftOut);
    if (out !== undefined) changes.push(leftOut(out, cells, rules));
    else if (at >= found.from && !cells.every(isEmpty)) copy({ at, from: found.from, cells, inRow });
  }
  changes.push(...kept.flatMap((one, index) => typedChange(one, typed[index] ?? 0)));
  return {
    columns: kept.map(({ heading: { text }, read }) => ({ heading: text, kind: read?.kind ?? null })),
    rows,
    changes,
  };

  function copy(row: RowAt): void {
    const above = rules.blankIsAbove ? (rows.at(-1) ?? []) : [];
    const clean = kept.map((one, index) => columnCell(one, row, above[index] ?? null));
    for (const [index, { told, typedAsText }] of clean.entries()) {
      const where = rules.nameOf(row.at + 1, kept[index]?.column ?? 1);
      changes.push(...told.map((one) => ({ where, ...one })));
      if (typedAsText) typed[index] = (typed[index] ?? 0) + 1;
    }
    rows.push(clean.map(({ cell }) => cell));
  }
}

/** A column of the table that holds something. */
interface Kept {
  /** From 1, among the columns looked at. */
  readonly column: number;
  readonly read: ReadColumn | null;
  readonly heading: CleanHeading;
}

/** A row that goes into the copy. */
interface RowAt {
  /** From 0 among the rows looked at, the heading's row among them. */
  readonly at: number;
  /** How many rows stand above the first one read. */
  readonly from: number;
  readonly cells: readonly Cell[];
  readonly inRow: readonly Reading[];
}

function keptColumns(rows: readonly (readonly Cell[])[], { columns, from }: LookedOver): readonly Kept[] {
  const places = Array.from({ length: rows[0]?.length ?? 0 }, (_, at) => at);
  const filled = places.filter((at) => rows.some((row) => !isEmpty(row[at])));
  return filled.map((at, index) => {
    const read = columns.find(({ column }) => column === at + 1) ?? null;
    const first = from === 0 ? null : (rows[0]?.[at] ?? null);
    return { column: at + 1, read, heading: cleanHeading(first, read, index + 1) };
  });
}

function columnCell({ column, read }: Kept, { at, from, cells, inRow }: RowAt, above: NewCell | null): CleanCell {
  return cleanCell({
    cell: cells[column - 1] ?? null,
    kind: read?.kind ?? null,
    value: read?.values?.[at - from] ?? Number.NaN,
    readings: inRow.filter(({ place }) => (place.column ?? 1) === column),
    above,
  });
}

function byRow(readings: readonly Reading[]): ReadonlyMap<number, readonly Reading[]> {
  const rows = new Map<number, Reading[]>();
  for (const reading of readings) {
    const known = rows.get(reading.place.row);
    if (known === undefined) rows.set(reading.place.row, [reading]);
    else known.push(reading);
  }
  return rows;
}

function isLeftOut(reading: Reading): boolean {
  if (reading.kind === "not-recorded") return reading.why === "empty-row";
  return reading.kind === "possible-total" && reading.row === "label";
}

function leftOut(reading: Reading, cells: readonly Cell[], { nameOf }: CleanRules): Change {
  const texts = cells.map(cellShown).filter((text) => text !== "");
  const where = nameOf(reading.place.row, reading.place.column ?? 1);
  return { where, was: texts.join(", ") || "empty row", became: LEFT_OUT, why: readingAdvice(reading, "label") };
}

function headingChanges(kept: readonly Kept[], { nameOf }: CleanRules): readonly Change[] {
  return kept.flatMap(({ column, heading: { why, was, text } }) =>
    why === null ? [] : [{ where: nameOf(1, column), was, became: text, why }],
  );
}

/** Plain numbers and dates that were typed as texts look as before: they are told of together. */
function typedChange({ heading, read }: Kept, count: number): readonly Change[] {
  if (count === 0) return [];
  const [one, became] = read?.kind === "date" ? ["date", "dates"] : ["number", "numbers"];
  const was = `${counted(count, one)} typed as text`;
  return [{ where: `Column ${heading.text}`, was, became, why: "A text cannot be added up, or put in order, as one." }];
}
