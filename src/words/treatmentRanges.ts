import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import { sentenceStart } from "./sentenceStart";
import { shortLabel } from "./shortLabel";
import { treatmentRange } from "./treatmentRange";

/** The range of each treatment that has one against the usual: "Straw: the true change may be 13 % to 95 %." */
export function treatmentRanges({ treatments }: ManyTreatments): readonly string[] {
  return treatments.flatMap(({ name, againstUsual }) =>
    againstUsual === null || !isKnown(againstUsual.pValue) || !isKnown(againstUsual.change)
      ? []
      : [`${sentenceStart(shortLabel(name))}: the true change may be ${treatmentRange(againstUsual)}.`],
  );
}
