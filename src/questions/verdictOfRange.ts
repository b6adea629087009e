import type { MeansCompared } from "../methods/compareMeans";
import { rangeVerdict } from "../methods/verdict";
import { type Absence, isKnown } from "../nouns/known";
import type { RangeVerdict } from "../nouns/verdict";

/**
 * What the percent range of two averages says, or why there is none.
 *
 * @param worthwhile the smallest change worth acting on, as a fraction above 0
 */
export function verdictOfRange(
  { change, changeRange, t }: Pick<MeansCompared, "change" | "changeRange" | "t">,
  worthwhile: number,
): RangeVerdict | Absence {
  if (!isKnown(t)) return t;
  if (!isKnown(change)) return change;
  return rangeVerdict(changeRange.low, changeRange.high, worthwhile);
}
