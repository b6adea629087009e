import type { Desk } from "../../../../answers/desk";
import { type Cell, isEmpty } from "../../../../nouns/cell";
import type { LookedOver, ReadColumn } from "../../../../nouns/findings/lookedOver";
import { typed } from "../../../ask";
import { askNamed } from "../../../askNamed";

/** What of a wide table is what; rows and columns count from 0. */
export interface WideParts {
  readonly headingRow: number;
  /** The row below the headings that says what was measured; null for none. */
  readonly measureRow: number | null;
  /** Columns of names, left of all others. */
  readonly labels: readonly number[];
  readonly groups: readonly Group[];
  /** Rows of plants. */
  readonly rows: readonly number[];
  /** Rows and columns of totals and averages, by the cell that says so. */
  readonly totals: readonly (readonly [row: number, column: number])[];
}

/** The columns under one heading: one for each thing that was measured. */
export interface Group {
  readonly heading: number;
  readonly columns: readonly number[];
}

type Cells = readonly (readonly Cell[])[];

/**
 * Finds the names, the headings across and the plants of a wide table. Rows and columns of totals are set aside. What
 * is a name, and what a total, is LOOKOVER's to say, as in any other table.
 */
export function wideParts(cells: Cells, headingRow: number, desk: Desk): WideParts {
  const headings = cells[headingRow] ?? [];
  const below = cells.slice(headingRow + 1);
  const used = headings.map((_, at) => at).filter((at) => !below.every((row) => isEmpty(row[at] ?? null)));
  const labels = labelColumns(cells.slice(headingRow), used, desk);
  const values = used.filter((at) => !labels.includes(at));
  const totalColumns = totalsAmong(
    values.map((at) => headings[at] ?? null),
    desk,
  ).map((index) => values[index] ?? 0);
  const counted = values.filter((at) => !totalColumns.includes(at));
  const isMeasures = counted.length > 0 && counted.every((at) => isName(below[0]?.[at] ?? null, desk));
  const measureRow = isMeasures ? headingRow + 1 : null;
  const filled = cells.flatMap((row, at) => (at > (measureRow ?? headingRow) && !row.every(isEmpty) ? [at] : []));
  const named = filled.map((row) => cells[row]?.[labels[0] ?? 0] ?? null);
  const totalRows = new Set(labels.length === 0 ? [] : totalsAmong(named, desk).map((index) => filled[index] ?? 0));
  return {
    headingRow,
    measureRow,
    labels,
    groups: groupsOf(headings, counted),
    rows: filled.filter((row) => !totalRows.has(row)),
    totals: [
      ...[...totalRows].map((row) => [row, labels[0] ?? 0] as const),
      ...totalColumns.map((column) => [headingRow, column] as const),
    ],
  };
}

/** The columns from the left that hold names; one without a heading holds the plants' numbers. */
function labelColumns(table: Cells, used: readonly number[], desk: Desk): readonly number[] {
  const kinds = columnsRead(table, desk);
  const isLabel = (at: number, index: number) =>
    kinds.find(({ column }) => column === at + 1)?.kind === "label" || (index === 0 && isEmpty(table[0]?.[at] ?? null));
  const first = used.findIndex((at, index) => !isLabel(at, index));
  return used.slice(0, first < 0 ? used.length : first);
}

/** An empty heading belongs to the one left of it, as in merged cells. */
function groupsOf(headings: readonly Cell[], values: readonly number[]): readonly Group[] {
  const groups: { heading: number; columns: number[] }[] = [];
  for (const column of values) {
    const before = groups.at(-1);
    if (isEmpty(headings[column] ?? null) && before !== undefined) before.columns.push(column);
    else groups.push({ heading: column, columns: [column] });
  }
  return groups;
}

/**
 * Which of some names LOOKOVER takes for a total's or an average's; none where most are, as "week 1", "week 2" are
 * days.
 */
function totalsAmong(names: readonly Cell[], desk: Desk): readonly number[] {
  const cells = [["name"], ...names.map((name): readonly Cell[] => [name])];
  const found = (lookedOver(cells, desk, "label")?.readings ?? []).flatMap((one) =>
    one.kind === "possible-total" && one.row === "label" ? [one.place.row - 2] : [],
  );
  return 2 * found.length > names.length ? [] : found;
}

/** A text that is neither an amount nor a date: the name of what was measured. */
function isName(cell: Cell, desk: Desk): boolean {
  if (typeof cell !== "string" || isEmpty(cell)) return false;
  return columnsRead([[cell], [cell]], desk)[0]?.kind === "label";
}

/** What the columns of a table hold. */
export function columnsRead(cells: Cells, desk: Desk): readonly ReadColumn[] {
  return lookedOver(cells, desk)?.columns ?? [];
}

function lookedOver(cells: Cells, desk: Desk, kind: string | null = null): LookedOver | null {
  const kindTyped = kind === null ? [] : [typed("kind", [[kind]])];
  const reply = askNamed(desk, "LOOKOVER", [typed("cells", cells), ...kindTyped]);
  return "problem" in reply || reply.finding.finding !== "looked-over" ? null : reply.finding;
}
