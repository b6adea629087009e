import type { Block } from "../experiment";
import { even, HEADINGS, sideBySideCases } from "./trials";
import { ANY_DOWN, ANY_UP, NOT_SETTLED, rangesHold, verdictShare } from "./verdictShares";

/** Two treatments that truly give alike, in trials of the promised sort: the false alarms. */
export const nothingDiffers: Block = {
  title: "When nothing differs",
  headings: HEADINGS,
  shares: [
    verdictShare("Any up", ANY_UP, { most: 0.03 }),
    verdictShare("Up, enough to matter", ["up-enough"], { most: 0.015 }),
    verdictShare("Any down", ANY_DOWN),
    verdictShare("Near level", ["level"]),
    verdictShare("Not settled", NOT_SETTLED),
    ...rangesHold,
  ],
  cases: sideBySideCases(
    [
      ...even("gamma", [4, 12], [0.2, 0.5]),
      ...even("gamma", [8], [0.35]),
      ...even("counts", [4, 8], [0.35]),
      ...even("lognormal", [4, 8], [0.5]),
    ],
    [0],
  ),
  meaning: ({ most }) =>
    `If the new way truly gives the same, it is called "Up" in at most ${most("Any up")} of trials, and "Up, enough to matter" in at most ${most("Up, enough to matter")}. Nearly always the answer is "Not settled": that is the honest answer, and it does not say that nothing differs.`,
};
