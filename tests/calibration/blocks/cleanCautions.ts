import type { Block } from "../experiment";
import { even, HEADINGS, sideBySideCases } from "./trials";

const SELDOM = { most: 0.1 };

const shares = [
  { heading: "Percent of almost nothing", events: ["C05"], promise: SELDOM },
  { heading: "Far from the rest", events: ["C06"], promise: SELDOM },
  { heading: "Vary much more", events: ["C07"], promise: SELDOM },
  { heading: "Not that many times", events: ["C16"], promise: SELDOM },
  { heading: "Rests on one plant", events: ["C21"], promise: SELDOM },
  { heading: "Two checks do not agree", events: ["C22"], promise: SELDOM },
  { heading: "Often smaller in truth", events: ["C30"], promise: SELDOM },
  {
    heading: "Any other but place and season",
    events: ["C01", "C03", "C04", "C14", "C15", "C17", "C35"],
    promise: SELDOM,
  },
];

/** The cautions that a sound trial can raise; C12 is always there, and the others need a slip, a loss or few plants. */
export const cleanCautions: Block = {
  title: "How often sound trials raise a caution",
  headings: HEADINGS,
  shares,
  cases: sideBySideCases(
    [
      ...even("gamma", [4], [0.2]),
      ...even("lognormal", [8], [0.35]),
      ...even("counts", [6], [0.35]),
      { kind: "gamma", plants: [4, 8], unevenness: [0.5, 0.5] } as const,
      { kind: "gamma", plants: [8, 4], unevenness: [0.2, 0.2] } as const,
      { kind: "gamma", plants: [4, 12], unevenness: [0.35, 0.35] } as const,
      { kind: "lognormal", plants: [10, 6], unevenness: [0.5, 0.5] } as const,
    ].map((trial) => ({ ...trial, cautions: true })),
    [0, 0.5],
  ),
  meaning: () =>
    "In a sound trial no caution but the one on place and season comes up more than once in ten, whether nothing differs or the new way gives half as much again. So a caution that does come up is worth reading.",
};

/** The same with one plant of each treatment in every bed. */
export const bedsCautions: Block = {
  title: "How often sound trials in beds raise a caution",
  headings: HEADINGS,
  shares,
  cases: sideBySideCases(
    [...even("gamma", [6], [0.2]), ...even("gamma", [8], [0.35]), ...even("lognormal", [12], [0.5])].map((trial) => ({
      ...trial,
      beds: 0.3,
      options: { how: "beds" },
      cautions: true,
    })),
    [0, 0.5],
  ),
  meaning: () => "Compared bed by bed, sound trials raise cautions as seldom.",
};
