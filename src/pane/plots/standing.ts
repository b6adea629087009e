import type { ManyTreatments, TreatmentFound } from "../../nouns/findings/manyTreatments";
import { isKnown } from "../../nouns/known";
import type { RangeEnds } from "./rangeBar";

/** A treatment as a picture places it: its average, and the range of where it stands against the base. */
export interface Standing {
  readonly treatment: TreatmentFound;
  /** Its average; with beds, as if every treatment had stood in every bed. */
  readonly height: number;
  /** Whether the others are set against this one: the usual, or the highest where no usual is named. */
  readonly isBase: boolean;
  /** The ends of its range as amounts; null for the base itself, and where there is no range. */
  readonly ends: RangeEnds | null;
}

/** Every treatment that has plants, the highest first. */
export function standings(found: ManyTreatments): readonly Standing[] {
  const placed = found.treatments.flatMap((treatment) => {
    const height = treatment.meanBedsRemoved ?? treatment.mean;
    return treatment.plants.length > 0 && isKnown(height) ? [{ treatment, height }] : [];
  });
  const base = found.usual === null ? placed[0] : placed.find(({ treatment }) => treatment.isUsual);
  return placed.map(({ treatment, height }) => {
    const isBase = treatment === base?.treatment;
    const ends = isBase || base === undefined ? null : endsOf(found, treatment, base);
    return { treatment, height, isBase, ends };
  });
}

/** The range against the base, set out from the base's average. */
function endsOf(
  found: ManyTreatments,
  { name, againstUsual }: TreatmentFound,
  base: Pick<Standing, "treatment" | "height">,
): RangeEnds | null {
  if (againstUsual !== null) return changeEnds(againstUsual, base.height);
  const pair = found.pairs().find(({ higher, lower }) => higher === base.treatment.name && lower === name);
  if (pair === undefined) return null;
  const { low, high } = pair.differenceRange;
  return isKnown(low) && isKnown(high) ? [base.height - high, base.height - low] : null;
}

/**
 * The percent range as amounts, so that bar and verdict agree; the range of the difference where no percent is given.
 */
function changeEnds(
  { changeRange, differenceRange }: NonNullable<TreatmentFound["againstUsual"]>,
  base: number,
): RangeEnds | null {
  const { low, high } = changeRange;
  if (isKnown(high)) return [isKnown(low) ? base * (1 + low) : null, base * (1 + high)];
  if (isKnown(low)) return [base * (1 + low), null];
  const { low: least, high: most } = differenceRange;
  return isKnown(least) && isKnown(most) ? [base + least, base + most] : null;
}
