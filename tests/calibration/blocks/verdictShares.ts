import type { Verdict } from "../../../src/nouns/verdict";
import type { Share } from "../experiment";

/** How often one of these verdicts is given. */
export function verdictShare(heading: string, verdicts: readonly Verdict[], promise: Share["promise"] = {}): Share {
  return { heading, events: verdicts.map((verdict) => `verdict ${verdict}`), promise };
}

export const ANY_UP = ["up-enough", "up-small", "up-unclear"] as const;
export const ANY_DOWN = ["down-enough", "down-small", "down-unclear"] as const;
export const NOT_SETTLED = ["open", "open-up", "open-down"] as const;

/** What issue 5 promises of ranges meant to hold the truth 95 times in 100. */
const COVERAGE = { least: 0.93, most: 0.985 };

/** How often the two ranges hold the truth, as promised of clean trials. */
export const rangesHold: readonly Share[] = [
  { heading: "Percent range holds the truth", events: ["percent range holds"], promise: COVERAGE },
  { heading: "Difference range holds the truth", events: ["difference range holds"], promise: COVERAGE },
];
