import type { Block } from "../experiment";
import { even, HEADINGS, sideBySideCases } from "./trials";
import { ANY_DOWN, NOT_SETTLED, rangesHold, verdictShare } from "./verdictShares";

const shares = [
  verdictShare("Up, enough to matter", ["up-enough"]),
  verdictShare("Up, how far unclear", ["up-unclear"]),
  verdictShare("Up, too small to matter", ["up-small"]),
  verdictShare("Not settled", NOT_SETTLED),
  verdictShare("Any down", ANY_DOWN),
];

/** A true change below what is worthwhile. */
export const belowWorthwhile: Block = {
  title: "When the true change is too small to matter",
  headings: HEADINGS,
  shares: [...shares, verdictShare("Near level", ["level"]), ...rangesHold],
  cases: sideBySideCases([...even("gamma", [12], [0.1, 0.35]), ...even("counts", [8], [0.35])], [0.05]),
  meaning: ({ most }) =>
    `A true gain of 5 %, less than anyone would act on, is called "Up, enough to matter" in at most ${most("Up, enough to matter")} of trials.`,
};

/** A true change that is just worthwhile, either way. */
export const atWorthwhile: Block = {
  title: "When the true change is just worthwhile",
  headings: HEADINGS,
  shares: [...shares, verdictShare("Near level", ["level"], { most: 0.03 }), ...rangesHold],
  cases: sideBySideCases(
    [
      ...even("gamma", [4, 12], [0.1]),
      ...even("counts", [8], [0.2]),
      { kind: "gamma", plants: [4, 12], unevenness: [0.1, 0.1] },
    ],
    [0.1, -0.1],
  ),
  meaning: ({ most }) =>
    `"Near level" means that no change worth acting on is left in the range. If such a change is there all the same, "Near level" is said in at most ${most("Near level")} of trials.`,
};

/** True changes that a grower would want to find. */
export const aboveWorthwhile: Block = {
  title: "When the true change matters",
  headings: HEADINGS,
  shares: [...shares, ...rangesHold],
  cases: sideBySideCases(
    [
      ...even("gamma", [4], [0.35]),
      ...even("gamma", [8], [0.2]),
      ...even("lognormal", [6], [0.5]),
      ...even("counts", [12], [0.35]),
    ],
    [0.3, 1, -0.3],
  ),
  meaning: ({ most }) =>
    `Small trials miss true gains: up to ${most("Not settled")} of these trials end "Not settled" although the gain is real. A gain taken for a loss ("Any down" where the change is a gain) comes up in at most ${most("Any down", "+30 %")} of trials. The range holds the true change about as often as it says.`,
};
