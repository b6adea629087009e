import type { Block } from "../experiment";
import { TOLD } from "./text";
import { even, HEADINGS, sideBySideCases } from "./trials";
import { ANY_DOWN, ANY_UP, NOT_SETTLED, rangesHold, verdictShare } from "./verdictShares";

/** Less is wanted (days, damage): worthwhile is −10 %. */
export const lessWanted: Block = {
  title: "Where less is wanted (worthwhile −10 %)",
  headings: HEADINGS,
  shares: [
    verdictShare("Down, enough to matter", ["down-enough"]),
    verdictShare("Any down", ANY_DOWN),
    verdictShare("Near level", ["level"]),
    verdictShare("Not settled", NOT_SETTLED),
    verdictShare("Any up", ANY_UP),
    ...rangesHold.map(({ heading, events }) => ({ heading, events })),
  ],
  cases: sideBySideCases(
    even("gamma", [4, 8], [0.2]).map((trial) => ({ ...trial, options: { worthwhile: -0.1 } })),
    [0, -0.1, -0.3],
    TOLD,
  ),
  meaning: () =>
    "The answer is as careful where less is wanted: a fall is called no more often by luck than a gain is above. Only the advice turns round.",
};
