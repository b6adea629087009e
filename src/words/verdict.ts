import type { Verdict } from "../nouns/verdict";

/** The verdict as a cell shows it (METHODS 6.1). "Up" and "down" never mean good or bad. */
export function verdictText(verdict: Verdict): string {
  return texts[verdict];
}

const texts: Readonly<Record<Verdict, string>> = {
  "up-enough": "Up, enough to matter",
  "up-small": "Up, too small to matter",
  "up-unclear": "Up, how far unclear",
  "down-enough": "Down, enough to matter",
  "down-small": "Down, too small to matter",
  "down-unclear": "Down, how far unclear",
  level: "Near level",
  "open-up": "Not settled, may be up",
  "open-down": "Not settled, may be down",
  open: "Not settled",
  "leaning-up": "Leaning up, too few plants",
  "leaning-down": "Leaning down, too few plants",
  few: "Too few plants",
  none: "No answer",
};
