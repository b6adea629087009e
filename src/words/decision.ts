import type { Verdict } from "../nouns/verdict";
import { sentenceStart } from "./sentenceStart";

/** What to do next, as clauses: where the new way is cheap and harmless, and where it costs money or labour. */
export interface Decision {
  readonly cheap: string;
  readonly costly: string;
}

/** The decision table of METHODS 2.1. Where less is wanted, it is to be asked with the mirrored verdict. */
export function decision(verdict: Verdict): Decision {
  return table[verdict];
}

/** Both columns of the table as sentences; one where they agree. */
export function decisionSentences(verdict: Verdict): readonly string[] {
  const { cheap, costly } = decision(verdict);
  if (cheap === costly) return [`${sentenceStart(cheap)}.`];
  return [`If the new way is cheap and harmless, ${cheap}.`, `If it costs money or labour, ${costly}.`];
}

const drop: Decision = { cheap: "drop or change the idea", costly: "drop it" };

const demonstration = both("it was a demonstration. Say what you saw, and plan a trial");

const table: Readonly<Record<Verdict, Decision>> = {
  "up-enough": {
    cheap: "use it on part and compare side by side once more",
    costly: "try it again. Switch if WORTHIT's low end is above 0, or a second season agrees",
  },
  "up-unclear": { cheap: "try it again with more plants", costly: "try it again before paying" },
  "up-small": { cheap: "it is your choice", costly: "it is not worth paying for" },
  "leaning-up": both("try it again with more plants"),
  "open-up": {
    cheap: "it is your choice. It may be worth trying again with more plants",
    costly: "do not pay yet. Try it again only if the plan's chance is at least 50 %",
  },
  open: both("make no change on this evidence"),
  level: { cheap: "choose the cheaper or easier one", costly: "drop it" },
  "open-down": drop,
  "down-enough": drop,
  "down-small": drop,
  "down-unclear": drop,
  "leaning-down": both("drop or change the idea. If you still believe in it, try it again with more plants"),
  few: demonstration,
  none: demonstration,
};

function both(clause: string): Decision {
  return { cheap: clause, costly: clause };
}
