import type { Block } from "../experiment";
import { PROMISED, TOLD } from "./text";
import { even, HEADINGS, sideBySideCases } from "./trials";
import { ANY_DOWN, ANY_UP, NOT_SETTLED, rangesHold, verdictShare } from "./verdictShares";

const unpromised = rangesHold.map(({ heading, events }) => ({ heading, events }));

/**
 * More plants of one treatment, or plants of one treatment more uneven. Issue 5's "any Up at most 3 %" is missed here: t
 * tests lean towards the treatment whose plants are fewer, wilder and skewed, and no bar of ours mends that.
 */
export const unlikeSpread: Block = {
  title: "A promise missed: unequal numbers, or one treatment more uneven",
  headings: HEADINGS,
  shares: [
    verdictShare("Any up", ANY_UP),
    verdictShare("Up, enough to matter", ["up-enough"]),
    verdictShare("Any down", ANY_DOWN),
    verdictShare("Not settled", NOT_SETTLED),
    ...unpromised,
  ],
  cases: sideBySideCases(
    [
      { kind: "gamma", plants: [8, 8], unevenness: [0.3, 0.45] },
      { kind: "gamma", plants: [8, 8], unevenness: [0.45, 0.3] },
      { kind: "gamma", plants: [4, 8], unevenness: [0.35, 0.35] },
      { kind: "gamma", plants: [8, 4], unevenness: [0.35, 0.35] },
      { kind: "gamma", plants: [4, 12], unevenness: [0.35, 0.35] },
      { kind: "gamma", plants: [4, 8], unevenness: [0.45, 0.3] },
      { kind: "lognormal", plants: [4, 12], unevenness: [0.5, 0.333] },
      { kind: "gamma", plants: [4, 8], unevenness: [0.5, 0.2] },
      ...even("lognormal", [8], [1]),
    ],
    [0],
    PROMISED / 2,
  ),
  meaning: ({ most, least }) =>
    `Here "Up" is said too often: the aim is at most 3 %, and it is ${most("Any up", "8 and 8")} with 8 of each where the usual is half as uneven again, and up to ${most("Any up")} with few and uneven usual plants beside many. ("Down" mirrors it where the few are the new.) The range holds the truth in as few as ${least("Percent range holds the truth")}. Set out as many plants of each.`,
};

/** Two and three plants. */
export const fewPlants: Block = {
  title: "Beyond the promise: two and three plants",
  headings: HEADINGS,
  shares: [
    verdictShare("Too few plants", ["few"]),
    verdictShare("Leaning up", ["leaning-up"]),
    verdictShare("Leaning down", ["leaning-down"]),
    verdictShare("Not settled or near level", [...NOT_SETTLED, "level"]),
    ...unpromised,
  ],
  cases: sideBySideCases(
    [
      ...even("gamma", [2, 3], [0.2, 0.35]),
      { kind: "gamma", plants: [2, 8], unevenness: [0.35, 0.35] },
      { kind: "gamma", plants: [3, 12], unevenness: [0.35, 0.35] },
    ],
    [0, 0.5],
    TOLD,
  ),
  meaning: ({ most }) =>
    `With two plants of each the answer is always "Too few plants". With three of one it leans at most. Where nothing differs, luck makes up to ${most("Leaning up", "none")} lean up, most of all where 2 or 3 plants stand beside many.`,
};
