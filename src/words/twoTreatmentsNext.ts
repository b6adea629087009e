import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import type { Verdict } from "../nouns/verdict";
import { decisionSentences } from "./decision";
import { mirrored } from "./direction";
import { planCall } from "./planCall";

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

/** The plan's change lies halfway between the one seen, which is often too big, and the smallest that matters. */
function plan(found: TwoTreatments): readonly string[] {
  const { usual, tried, change, worthwhile, pairs } = found;
  const sign = worthwhile.lessWanted ? -1 : 1;
  const seen = isKnown(change) ? sign * change : 0;
  const size = seen > worthwhile.size ? (seen + worthwhile.size) / 2 : worthwhile.size;
  const uneven = [usual.unevenness, tried.unevenness].filter(isKnown);
  const unevenness = uneven.length === 0 ? null : Math.max(...uneven);
  const call = planCall({ change: sign * size, unevenness, treatments: 2, beds: pairs === null ? null : "one each" });
  const halfway =
    size > worthwhile.size ? " That is for a change halfway between what you saw and what would matter." : "";
  return [`To plan it, type ${call}.${halfway}`];
}
