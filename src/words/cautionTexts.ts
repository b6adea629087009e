import type { Finding } from "../nouns/finding";
import { lookOutFor } from "./lookOutFor";

/** What *show* "cautions" lists: every caution's sentence, most important first, place and season last. */
export function cautionTexts(finding: Pick<Finding, "cautions">): readonly string[] {
  return lookOutFor(finding.cautions()).map(({ sentence }) => sentence);
}
