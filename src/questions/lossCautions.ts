import { changeOf } from "../methods/compareMeans";
import { describe } from "../methods/describe";
import type { Caution, Loss } from "../nouns/caution";
import { isKnown, type Known } from "../nouns/known";
import type { Plant, Sample } from "../nouns/sample";
import { valuesOf } from "./harvest";

/** Two treatments with lost plants, and what becomes of the change when those count as zero. */
export interface Losses {
  readonly usual: Sample;
  readonly tried: Sample;
  readonly change: Known;
  readonly changeLostAsZero: Known;
  readonly countedAsZero: boolean;
}

/** A share of lost plants, or a gap between two, from which a loss weighs heavily. */
const STRONG_LOSS = 0.2;

/** C03 and C04 where a plant was lost in either treatment. */
export function lossCautions({ usual, tried, ...changes }: Losses): readonly Caution[] {
  const losses = [lossOf(usual, "usual"), lossOf(tried, "new")];
  if (losses.every(({ lost }) => lost === 0)) return [];
  const [before = 0, after = 0] = losses.map(({ lost, setOut }) => lost / setOut);
  const strong = Math.max(before, after) >= STRONG_LOSS || Math.abs(after - before) >= STRONG_LOSS;
  return [{ caution: "C03", losses, ...changes, strong }, { caution: "C04" }];
}

/** The change between the averages of two treatments' plants. */
export function changeBetween(usual: readonly Plant[], tried: readonly Plant[]): Known {
  const [before, after] = [usual, tried].map((plants) => describe(valuesOf(plants)).mean);
  return changeOf(numberOrNone(before), numberOrNone(after));
}

function numberOrNone(mean: Known | undefined): number {
  return mean !== undefined && isKnown(mean) ? mean : Number.NaN;
}

function lossOf({ name, entries }: Sample, role: Loss["role"]): Loss {
  return { name, role, lost: entries.filter(({ kind }) => kind === "lost").length, setOut: entries.length };
}
