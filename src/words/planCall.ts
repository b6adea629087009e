import type { PlanBasis } from "../nouns/findings/planning";
import { typedPercent } from "./typed";

/** What a ready formula for PLANTSNEEDED needs; unevenness is null where none is known. */
export interface PlanCall {
  readonly change: number;
  readonly unevenness: number | null;
  readonly treatments: number;
  readonly beds: PlanBasis["beds"];
}

const generalGuess = 0.35;

/**
 * A formula for PLANTSNEEDED, ready to be typed: `=FAIRBED.PLANTSNEEDED(27%,33%)`. Unevenness is 35 %
 * where unknown; both figures stay within what the function takes.
 */
export function planCall({ change, unevenness, treatments, beds }: PlanCall): string {
  const uneven = unevenness === null || unevenness <= 0 ? generalGuess : Math.max(0.01, unevenness);
  const asked = `${typedPercent(Math.min(2.9, Math.max(-0.9, change)))},${typedPercent(Math.min(2.9, uneven))}`;
  if (treatments === 2 && beds === null) return `=FAIRBED.PLANTSNEEDED(${asked})`;
  return `=FAIRBED.PLANTSNEEDED(${asked},"answer",${treatments}${bedsArgument(beds)})`;
}

function bedsArgument(beds: PlanBasis["beds"]): string {
  if (beds === null) return "";
  return beds === "one each" ? ',"one each"' : `,${beds}`;
}
