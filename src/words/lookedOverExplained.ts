import type { Explanation } from "../nouns/explanation";
import type { LookedOver } from "../nouns/findings/lookedOver";
import { counted } from "./counted";
import { tellLookedOver } from "./lookedOver";
import { lookOutFor } from "./lookOutFor";

/** LOOKOVER's finding in plain words (METHODS 9.1). It tells nothing about luck, as it compares nothing. */
export function explainLookedOver(found: LookedOver): Explanation {
  const told = tellLookedOver(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: `${counted(found.numbers, "amount")} could be read. Headings and columns of notes were not looked at.`,
    luck: [],
    lookOutFor: lookOutFor(found.cautions()),
    next: [next(found)],
    workings: [
      "Each column was read as dates, names or amounts, by what most of its cells are.",
      "A plant stands out at five times the middle plant, or far from it for how much plants differ.",
      "A pick stands out at five times the middle weight per fruit, or a fifth of it. With no count, at eight times.",
      "Colours cannot be seen by a function.",
    ],
  };
}

function next({ cells, needLook, columns }: LookedOver): string {
  if (cells === 0) return "Point to cells that hold something.";
  if (needLook > 0) return "Mend what is wrong, keep what is real, and look again.";
  // only a log of picks has a column of days
  const isLog = columns.some(({ kind }) => kind === "date");
  return isLog ? "Now add up each plant's picks." : "Now compare the treatments.";
}
