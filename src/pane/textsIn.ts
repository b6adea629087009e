import type { CellRange } from "../nouns/cellRange";

/** The texts that stand in these cells, headings and names among them, each once. */
export function textsIn(ranges: readonly Pick<CellRange, "cells">[]): ReadonlySet<string> {
  const texts = new Set<string>();
  for (const { cells } of ranges) {
    for (const row of cells) for (const cell of row) if (typeof cell === "string") texts.add(cell);
  }
  return texts;
}
