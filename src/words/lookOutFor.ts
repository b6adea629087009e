import type { Caution } from "../nouns/caution";
import type { CautionLine } from "../nouns/explanation";
import { cautionLine } from "./caution";
import { orderCautions } from "./cautionOrder";

/** The explanation's part "Look out for": every caution in words, most important first. */
export function lookOutFor(cautions: readonly Caution[]): readonly CautionLine[] {
  return orderCautions(cautions).map(cautionLine);
}
