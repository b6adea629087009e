import type { ManyTreatments } from "../../src/nouns/findings/manyTreatments";
import { isProblem } from "../../src/nouns/problem";
import { compareMany } from "../../src/questions/compareMany";
import { toCellRange } from "../../src/ranges/toCellRange";

/** A plant's amount, or a word in its place; its treatment; and its bed, where there are beds. */
export type PlantRow = readonly [amount: number | string, treatment: string | null, bed?: number | string];

/** The options of the call, as typed. */
export interface Options {
  readonly usual?: string;
  readonly how?: string;
  readonly worthwhile?: number;
}

/** What COMPAREMANY finds for plants that stand in A2 (bed), B2 (treatment) and C2 (amount) and below. */
export function askedMany(rows: readonly PlantRow[], options: Options = {}): ManyTreatments {
  const range = (argument: string, letter: string, cells: readonly unknown[]) =>
    toCellRange(
      argument,
      cells.map((one) => [one]),
      { address: `Trial!${letter}2:${letter}${cells.length + 1}`, zerosVerified: true },
    );
  const typed = (argument: keyof Options) => {
    const value = options[argument];
    return value === undefined ? null : toCellRange(argument, [[value]], { address: null, zerosVerified: true });
  };
  const beds = rows.map(([, , bed]) => bed);
  const found = compareMany({
    amounts: range(
      "amounts",
      "C",
      rows.map(([amount]) => amount),
    ),
    treatments: range(
      "treatments",
      "B",
      rows.map(([, treatment]) => treatment),
    ),
    beds: beds.every((bed) => bed === undefined) ? null : range("beds", "A", beds),
    usual: typed("usual"),
    how: typed("how"),
    worthwhile: typed("worthwhile"),
  });
  if (isProblem(found)) throw new Error(found.problem);
  return found;
}
