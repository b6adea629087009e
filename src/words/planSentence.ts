import type { Worthwhile } from "../nouns/verdict";
import { type PlanCall, planCall } from "./planCall";

/** What a comparison tells of the next trial. */
interface Seen extends Pick<PlanCall, "unevenness" | "beds"> {
  /** The change seen, as a fraction; null where there is none. */
  readonly change: number | null;
  readonly worthwhile: Worthwhile;
}

/**
 * The formula that plans the next trial of two treatments. Its change lies halfway between the one seen, which is often
 * too big, and the smallest that matters.
 */
export function planSentence({ change, worthwhile, unevenness, beds }: Seen): string {
  const sign = worthwhile.lessWanted ? -1 : 1;
  const seen = change === null ? 0 : sign * change;
  const size = seen > worthwhile.size ? (seen + worthwhile.size) / 2 : worthwhile.size;
  const call = planCall({ change: sign * size, unevenness, treatments: 2, beds });
  const halfway =
    size > worthwhile.size ? " That is for a change halfway between what you saw and what would matter." : "";
  return `To plan it, type ${call}.${halfway}`;
}
