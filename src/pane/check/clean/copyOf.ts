import type { Desk } from "../../../answers/desk";
import { quotedSheet } from "../../../formula/quoted";
import type { CellRange } from "../../../nouns/cellRange";
import { counted } from "../../../words/counted";
import { addressOf, beyond } from "../../address";
import type { LookedAt } from "../lookedAt";
import { type Change, LEFT_OUT } from "./change";
import { cellShown } from "./cleanCell";
import { type CleanRules, type CleanTable, cleanTable } from "./cleanTable";
import type { Shape } from "./shape";
import { unfold } from "./wide/unfold";
import { wideParts } from "./wide/wideParts";

/** What the grower settles before a copy is made. */
export interface CopyRules extends Pick<CleanRules, "blankIsAbove"> {
  readonly shape: Shape;
}

/**
 * The clean copy of cells in the shape that the grower says they have, whatever stands above their headings left out.
 */
export function copyOf({ range }: Pick<LookedAt, "range">, { shape, blankIsAbove }: CopyRules, desk: Desk): CleanTable {
  const placeOf = (row: number, column: number) => nameOf(range, row, column);
  const above = leftOutAbove(range, shape.headingRow);
  if (shape.layout === "rows") {
    const down = shape.headingRow - 1;
    const corner = range.corner && { ...range.corner, row: range.corner.row + down };
    const table = over({ ...range, cells: range.cells.slice(down), corner }, desk, {
      blankIsAbove,
      nameOf: (row, column) => placeOf(row + down, column),
    });
    return { ...table, changes: [...above, ...table.changes] };
  }
  const parts = wideParts(range.cells, shape.headingRow - 1, desk);
  const { cells, origins, taken } = unfold(range.cells, parts, shape);
  const origin = (row: number, column: number) => origins[row - 1]?.[column - 1] ?? [1, 1];
  const table = over({ ...range, cells, corner: null }, desk, {
    blankIsAbove,
    nameOf: (row, column) => placeOf(...origin(row, column)),
  });
  const totals = parts.totals.map(([row, column]) => ({
    where: placeOf(row + 1, column + 1),
    was: cellShown(range.cells[row]?.[column] ?? null),
    became: LEFT_OUT,
    why: "It holds totals or averages, which can be worked out again.",
  }));
  const zeros = [...taken].map(([column, count]) => ({
    where: placeOf(shape.headingRow, column),
    was: `${counted(count, "empty cell")} below`,
    became: "0",
    why: "You said: nothing was picked.",
  }));
  return { ...table, changes: each([...above, ...totals, ...zeros, ...table.changes]) };
}

function over(range: CellRange, desk: Desk, rules: CleanRules): CleanTable {
  const reply = desk.ask("LOOKOVER", [range]);
  if ("problem" in reply || reply.finding.finding !== "looked-over") return { columns: [], rows: [], changes: [] };
  return cleanTable({ range, found: reply.finding }, rules);
}

function leftOutAbove(range: CellRange, headingRow: number): readonly Change[] {
  return range.cells.slice(0, headingRow - 1).flatMap((row, at) => {
    const column = row.findIndex((cell) => cellShown(cell) !== "");
    if (column < 0) return [];
    const was = row
      .map(cellShown)
      .filter((text) => text !== "")
      .join(", ");
    const where = nameOf(range, at + 1, column + 1);
    return [{ where, was, became: LEFT_OUT, why: "It stands above the headings." }];
  });
}

/** A heading across is told of once, however many rows it was written into. */
function each(changes: readonly Change[]): readonly Change[] {
  const seen = new Set<string>();
  return changes.filter((change) => {
    const key = JSON.stringify(change);
    return !seen.has(key) && seen.add(key);
  });
}

function nameOf({ corner }: Pick<CellRange, "corner">, row: number, column: number): string {
  if (corner === null) return `row ${row}, column ${column}`;
  return `${quotedSheet(corner.sheet)}!${addressOf(beyond(corner, row - 1, column - 1))}`;
}
