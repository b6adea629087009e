import { theDesk } from "../../../../src/answers/theDesk";
import type { Cell } from "../../../../src/nouns/cell";
import type { CellRange } from "../../../../src/nouns/cellRange";
import type { LookedOver } from "../../../../src/nouns/findings/lookedOver";
import { addressOf } from "../../../../src/pane/address";
import { type CleanRules, cleanTable } from "../../../../src/pane/check/clean/cleanTable";

/** Cells from A1 on, as LOOKOVER sees them. */
export function lookedOver(cells: readonly (readonly Cell[])[]): {
  readonly range: CellRange;
  readonly found: LookedOver;
} {
  const range = { argument: "cells", cells, corner: { sheet: "Picks", row: 1, column: 1 }, zerosVerified: true };
  const reply = theDesk.ask("LOOKOVER", [range]);
  if ("problem" in reply || reply.finding.finding !== "looked-over") throw new Error("LOOKOVER refused");
  return { range, found: reply.finding };
}

/** Their clean copy; cells are named as on their own sheet. */
export function cleaned(cells: readonly (readonly Cell[])[], rules: Partial<CleanRules> = {}) {
  const nameOf = (row: number, column: number) => addressOf({ row, column });
  return cleanTable(lookedOver(cells), { blankIsAbove: false, nameOf, ...rules });
}

/** A clean copy as the sheet would hold it, headings above. */
export function cellsOf({ columns, rows }: ReturnType<typeof cleaned>): readonly (readonly Cell[])[] {
  return [columns.map(({ heading }) => heading), ...rows.map((row) => row.map((cell) => cell?.content ?? null))];
}
