import type { Verdict } from "../nouns/verdict";

/** The verdict read the other way round, for a grower who wants less (METHODS 2.1). */
export function mirrored(verdict: Verdict): Verdict {
  return mirror[verdict];
}

const mirror: Readonly<Record<Verdict, Verdict>> = {
  "up-enough": "down-enough",
  "up-small": "down-small",
  "up-unclear": "down-unclear",
  "down-enough": "up-enough",
  "down-small": "up-small",
  "down-unclear": "up-unclear",
  level: "level",
  "open-up": "open-down",
  "open-down": "open-up",
  open: "open",
  "leaning-up": "leaning-down",
  "leaning-down": "leaning-up",
  few: "few",
  none: "none",
};

/** Words for a change of either sign; "gain" and "loss" only where more is wanted. */
export interface DirectionWords {
  readonly rise: string;
  readonly fall: string;
  readonly ahead: string;
  readonly behind: string;
}

export function directionWords(lessWanted: boolean): DirectionWords {
  return lessWanted
    ? { rise: "rise", fall: "drop", ahead: "higher", behind: "lower" }
    : { rise: "gain", fall: "loss", ahead: "ahead", behind: "behind" };
}
