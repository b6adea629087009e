import { isProblem, type Problem } from "../nouns/problem";
import type { Sample } from "../nouns/sample";
import { widthOf } from "../ranges/cellsOf";
import { type Argument, missing } from "../ranges/option";
import { readSample } from "../ranges/readSample";
import { readWhole } from "../ranges/readWhole";

/** One treatment's total as read, with the plants it is from. */
export interface TotalRead {
  readonly sample: Sample;
  /** Null where the cell holds no number. */
  readonly total: number | null;
  readonly plants: number;
}

/** Which arguments hold a treatment's total and its plants. */
export interface TotalArguments {
  readonly total: Argument;
  readonly totalName: string;
  readonly plants: Argument;
  readonly plantsName: string;
}

/** Reads one total, with or without a heading above it, and the whole number of plants that it is from. */
export function readTotal({ total, totalName, plants, plantsName }: TotalArguments): TotalRead | Problem {
  if (!total) return missing(totalName);
  const sample = readSample(total, "refuse");
  if (isProblem(sample)) return sample;
  if (sample.entries.length > 1)
    return { problem: "one-cell-wanted", argument: totalName, rows: total.cells.length, columns: widthOf(total) };
  const rule = { argument: plantsName, low: 1, high: null, fallback: missing(plantsName) };
  const count = readWhole(plants, rule);
  if (typeof count !== "number") return count;
  const [only] = sample.entries;
  return { sample, total: only?.kind === "value" ? only.value : null, plants: count };
}
