import type { AgainstUsual } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import { absenceText } from "./absence";
import { percentText, signedPercent } from "./percent";

/**
 * The percent range of one treatment against the usual within a sentence: "13 % to 95 %", "−25 % to +38 %", "anything at
 * all" without limits.
 */
export function treatmentRange({ changeRange: { low, high } }: AgainstUsual): string {
  if (!isKnown(low) && low.absent !== "no-lower-limit") return absenceText(low);
  if (!isKnown(low) && !isKnown(high)) return "anything at all";
  const signed = !isKnown(low) || !isKnown(high) || low <= 0;
  const text = signed ? signedPercent : percentText;
  const from = isKnown(low) ? text(low) : "−100 %";
  return isKnown(high) ? `${from} to ${text(high)}` : `${from} up, with no upper limit`;
}
