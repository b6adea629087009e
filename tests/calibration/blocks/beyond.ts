import type { Block } from "../experiment";
import { TOLD } from "./text";
import { even, HEADINGS, sideBySideCases } from "./trials";
import { ANY_DOWN, ANY_UP, NOT_SETTLED, rangesHold, verdictShare } from "./verdictShares";

const unpromised = rangesHold.map(({ heading, events }) => ({ heading, events }));

/**
 * More plants of one treatment, or plants of one treatment more uneven. Issue 5's "any Up at most 3 %" is missed here: of
 * yields, which lean to one side, a low average comes with a low spread, and so looks surer than it is. With as many
 * plants alike this cancels between the treatments. Welch's test is METHODS' choice and no caution's bar mends it.
 */
export const unlike: Block = {
  title: "A promise missed: unequal numbers, or one treatment more uneven",
  headings: HEADINGS,
  shares: [
    verdictShare("Any up (promised: at most 3 %)", ANY_UP),
    verdictShare("Up, enough to matter (promised: at most 1.5 %)", ["up-enough"]),
    { heading: "Up, and a caution with it", events: ["up, cautioned"] },
    verdictShare("Any down", ANY_DOWN),
    verdictShare("Not settled", NOT_SETTLED),
    { heading: "Percent range holds the truth (promised: at least 93 %)", events: ["percent range holds"] },
  ],
  cases: sideBySideCases(
    [
      { kind: "gamma", plants: [8, 8], unevenness: [0.3, 0.45] } as const,
      { kind: "gamma", plants: [8, 8], unevenness: [0.45, 0.3] } as const,
      { kind: "gamma", plants: [4, 8], unevenness: [0.2, 0.2] } as const,
      { kind: "gamma", plants: [4, 8], unevenness: [0.35, 0.35] } as const,
      { kind: "gamma", plants: [8, 4], unevenness: [0.35, 0.35] } as const,
      { kind: "gamma", plants: [4, 12], unevenness: [0.35, 0.35] } as const,
      { kind: "gamma", plants: [6, 12], unevenness: [0.45, 0.3] } as const,
      { kind: "gamma", plants: [4, 8], unevenness: [0.45, 0.3] } as const,
      { kind: "gamma", plants: [8, 4], unevenness: [0.3, 0.45] } as const,
      { kind: "lognormal", plants: [4, 12], unevenness: [0.5, 0.333] } as const,
    ].map((trial) => ({ ...trial, cautions: true })),
    [0],
  ),
  meaning: ({ most, least }) =>
    `Here "Up" is said too often though nothing differs. With 8 of each it comes in ${most("Any up (promised: at most 3 %)", "8 and 8")} of trials, if the usual is half as uneven again. With 4 uneven usual plants beside 12 it comes in up to ${most("Any up (promised: at most 3 %)")}, and the range holds the truth in as few as ${least("Percent range holds the truth (promised: at least 93 %)")}. Where the few are the new, "Down" is said too often. So set out as many plants of each.`,
};

/** Plants far more uneven than promised, or far less alike. */
export const veryUneven: Block = {
  title: "Beyond the promise: very uneven plants",
  headings: HEADINGS,
  shares: [
    verdictShare("Any up", ANY_UP),
    verdictShare("Any down", ANY_DOWN),
    verdictShare("Not settled", NOT_SETTLED),
    ...unpromised,
  ],
  cases: sideBySideCases(
    [
      { kind: "gamma", plants: [8, 8], unevenness: [0.5, 0.2] },
      { kind: "gamma", plants: [4, 8], unevenness: [0.5, 0.2] },
      { kind: "gamma", plants: [8, 4], unevenness: [0.5, 0.2] },
      ...even("lognormal", [4, 8], [1]),
    ],
    [0],
    TOLD,
  ),
  meaning: ({ most }) =>
    `If one treatment is far more uneven than the other, and has fewer plants, "Up" comes in up to ${most("Any up")} of trials though nothing differs. Very uneven plants do little harm if both treatments are alike in it.`,
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
      { kind: "gamma", plants: [3, 6], unevenness: [0.5, 0.2] },
    ],
    [0, 0.5],
    TOLD,
  ),
  meaning: ({ most }) =>
    `With two plants of each the answer is always "Too few plants". With three of one it leans at most. Where nothing differs, luck makes up to ${most("Leaning up", "none")} lean up, most of all where 2 or 3 plants stand beside many.`,
};
