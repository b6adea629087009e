import { changeOf } from "../methods/compareMeans";
import { describe } from "../methods/describe";
import type { Caution, Loss } from "../nouns/caution";
import type { Known } from "../nouns/known";
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

/** A share of lost plants from which a loss weighs heavily; a gap as wide between two treatments holds such a share. */
const STRONG_LOSS = 0.2;

/** Whether any of several treatments lost many of its plants. */
export function isStrongLoss(losses: readonly Loss[]): boolean {
  return losses.some(({ lost, setOut }) => lost / setOut >= STRONG_LOSS);
}

/** C03 and C04 where a plant was lost in either treatment. */
export function lossCautions({ usual, tried, ...changes }: Losses): readonly Caution[] {
  const losses = [lossOf(usual, "usual"), lossOf(tried, "new")];
  if (losses.every(({ lost }) => lost === 0)) return [];
  return [{ caution: "C03", losses, ...changes, strong: isStrongLoss(losses) }, { caution: "C04" }];
}

/** The change between the averages of two treatments' plants. */
export function changeBetween(usual: readonly Plant[], tried: readonly Plant[]): Known {
  const [before, after] = [describe(valuesOf(usual)), describe(valuesOf(tried))];
  return changeOf(before.summary.mean, after.summary.mean);
}

function lossOf({ name, entries }: Sample, role: Loss["role"]): Loss {
  return { name, role, lost: entries.filter(({ kind }) => kind === "lost").length, setOut: entries.length };
}
