import { isKnown, type Known } from "../nouns/known";
import type { Verdict } from "../nouns/verdict";
import { moreOrLess } from "./moreOrLess";

/** A change whose direction the verdict has settled: "44 % more"; "hardly more" where it rounds to no change at all. */
export function settledChange({ change, verdict }: { readonly change: Known; readonly verdict: Verdict }): string {
  const shown = isKnown(change) ? moreOrLess(change) : null;
  return shown ?? (verdict.startsWith("down") ? "hardly less" : "hardly more");
}
