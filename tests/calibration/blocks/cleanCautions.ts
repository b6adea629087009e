import type { Block } from "../experiment";
import { even, HEADINGS, sideBySideCases } from "./trials";

const SELDOM = { most: 0.1 };

/** The cautions that a sound trial can raise; C12 is always there, and the others need a slip, a loss or few plants. */
export const cleanCautions: Block = {
  title: "How often sound trials raise a caution",
  headings: HEADINGS,
  shares: [
    { heading: "Percent of almost nothing (C05)", events: ["C05"], promise: SELDOM },
    { heading: "Far from the rest (C06)", events: ["C06"], promise: SELDOM },
    { heading: "Vary much more (C07)", events: ["C07"], promise: SELDOM },
    { heading: "Not that many times (C16)", events: ["C16"], promise: SELDOM },
    { heading: "Rests on one plant (C21)", events: ["C21"], promise: SELDOM },
    { heading: "Two checks do not agree (C22)", events: ["C22"], promise: SELDOM },
    { heading: "Often smaller in truth (C30)", events: ["C30"], promise: SELDOM },
    {
      heading: "Any other but place and season",
      events: ["C01", "C03", "C04", "C14", "C15", "C17", "C35"],
      promise: SELDOM,
    },
  ],
  cases: sideBySideCases(
    [
      ...even("gamma", [4], [0.2]),
      ...even("lognormal", [8], [0.35]),
      ...even("lognormal", [10], [0.5]),
      ...even("counts", [6], [0.35]),
      { kind: "gamma", plants: [4, 8], unevenness: [0.5, 0.5] } as const,
      { kind: "gamma", plants: [8, 4], unevenness: [0.2, 0.2] } as const,
    ].map((trial) => ({ ...trial, cautions: true })),
    [0, 0.5],
  ),
  meaning: () =>
    "In a sound trial no caution but the one on place and season comes up more than once in ten, whether anything differs or not. So a caution that does come up is worth reading.",
};
