import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import type { Verdict } from "../nouns/verdict";
import { decisionSentences } from "./decision";
import { mirrored } from "./direction";
import { planSentence } from "./planSentence";

/**
 * What to do next (METHODS 2.1): first where the new way is cheap and harmless, then where it costs money or labour.
 * Where less is wanted the table is read mirrored.
 */
export function twoTreatmentsNext(found: TwoTreatments): readonly string[] {
  const wanted = found.worthwhile.lessWanted ? mirrored(found.verdict) : found.verdict;
  if (wanted === "none" && isKnown(found.differenceRange.low)) {
    return ["Give both averages, and judge the difference in amounts."];
  }
  return [...decisionSentences(wanted), ...(again.has(wanted) ? plan(found) : [])];
}

/** The verdicts after which a plan for another trial helps. */
const again: ReadonlySet<Verdict> = new Set<Verdict>(["up-unclear", "leaning-up", "open-up", "few"]);

function plan({ usual, tried, change, worthwhile, pairs }: TwoTreatments): readonly string[] {
  const uneven = [usual.unevenness, tried.unevenness].filter(isKnown);
  const unevenness = uneven.length === 0 ? null : Math.max(...uneven);
  const beds = pairs === null ? null : "one each";
  return [planSentence({ change: isKnown(change) ? change : null, worthwhile, unevenness, beds })];
}
