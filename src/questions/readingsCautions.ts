import type { Caution } from "../nouns/caution";
import type { CellRange } from "../nouns/cellRange";
import type { Reading } from "../nouns/reading";

/** What cells read one by one give to look out for: units and marks read away (C14), zeros nobody is sure of (C15). */
export function readingsCautions(range: CellRange, readings: readonly Reading[]): readonly Caution[] {
  const count = readings.filter(({ kind }) => kind === "unit-converted" || kind === "mark-removed").length;
  const zeros = range.zerosVerified ? 0 : readings.filter(({ kind }) => kind === "zero").length;
  return [
    ...(count > 0 ? [{ caution: "C14", count } as const] : []),
    ...(zeros > 0 ? [{ caution: "C15", zeros } as const] : []),
  ];
}
