import type { Block, Case } from "../experiment";
import { type Several, several } from "../several";
import { changeText, percent } from "./text";

/** COMPAREMANY takes longer to answer. */
const TRIALS = 2000;
const OTHERS = ["C01", "C03", "C04", "C05", "C14", "C15", "C17", "C35"];
const HEADINGS = ["New treatments", "Layout", "Of each", "Unevenness", "Lost", "True change of the first"];

/** Several new treatments, each against the usual: the first may differ, the others do not. */
export const againstUsual: Block = {
  title: "Several treatments against the usual",
  headings: HEADINGS,
  shares: [
    { heading: "Any of them up", events: ["some up"] },
    { heading: "Any of them up, enough to matter", events: ["some up-enough"] },
    { heading: "Any of them down", events: ["some down"] },
    { heading: "The first told apart", events: ["first told apart"] },
    { heading: "All percent ranges hold the truth", events: ["all percent ranges hold"] },
    { heading: "All difference ranges hold the truth", events: ["all difference ranges hold"] },
  ],
  cases: [0, 0.5].flatMap((first) => [
    manyCase({ plantsEach: 4, unevenness: 0.35 }, { count: 3, first }),
    manyCase({ plantsEach: 8, unevenness: 0.5, lost: 0.1 }, { count: 3, first }),
    manyCase({ plantsEach: 6, unevenness: 0.35 }, { count: 5, first }),
    manyCase({ plantsEach: 4, unevenness: 0.2, beds: 0.3 }, { count: 3, first }),
    manyCase({ plantsEach: 8, unevenness: 0.2, beds: 0.3 }, { count: 3, first }),
    manyCase({ plantsEach: 8, unevenness: 0.35, beds: 0.3, lost: 0.1 }, { count: 3, first }),
  ]),
  meaning: () =>
    "However many treatments are set against the usual, luck makes any of them look better about as seldom as one alone. All ranges together hold the truth about 19 times in 20.",
};

/** Every pair compared, when nothing differs. */
export const allPairs: Block = {
  title: "Every pair of several treatments, when nothing differs",
  headings: HEADINGS,
  shares: [
    { heading: "Any pair told apart", events: ["some pair told apart"] },
    { heading: "All difference ranges hold the truth", events: ["all difference ranges hold"] },
  ],
  cases: [
    manyCase({ plantsEach: 4, unevenness: 0.35, allPairs: true }, { count: 3, first: 0 }),
    manyCase({ plantsEach: 8, unevenness: 0.5, allPairs: true }, { count: 3, first: 0 }),
    manyCase({ plantsEach: 6, unevenness: 0.2, beds: 0.3, allPairs: true }, { count: 3, first: 0 }),
    manyCase({ plantsEach: 6, unevenness: 0.2, beds: 0.3, lost: 0.1, allPairs: true }, { count: 3, first: 0 }),
  ],
  meaning: ({ most }) =>
    `With six pairs to compare, luck tells any of them apart in at most ${most("Any pair told apart")} of trials; six separate comparisons would do so in about 1 trial of 5.`,
};

/** The cautions of a sound trial of several treatments. */
export const severalCautions: Block = {
  title: "How often sound trials of several treatments raise a caution",
  headings: HEADINGS,
  shares: [
    { heading: "Far from the rest", events: ["C06"], promise: { most: 0.1 } },
    { heading: "Rests on one plant", events: ["C21"], promise: { most: 0.1 } },
    { heading: "Two checks do not agree", events: ["C22"], promise: { most: 0.1 } },
    { heading: "Often smaller in truth", events: ["C30"], promise: { most: 0.1 } },
    { heading: "Any other but place and season", events: OTHERS, promise: { most: 0.1 } },
  ],
  cases: [0, 0.5].flatMap((first) => [
    manyCase({ plantsEach: 4, unevenness: 0.2, cautions: true }, { count: 3, first }),
    manyCase({ plantsEach: 6, unevenness: 0.35, cautions: true }, { count: 3, first }),
    manyCase({ plantsEach: 6, unevenness: 0.2, beds: 0.3, cautions: true }, { count: 3, first }),
  ]),
  meaning: () => "Where several treatments are compared, these cautions come up as seldom as with two.",
};

type Trial = Omit<Several, "kind" | "changes">;

function manyCase(trial: Trial, { count, first }: { readonly count: number; readonly first: number }): Case {
  const { plantsEach, unevenness, beds, lost = 0 } = trial;
  const layout = beds === undefined ? "separate" : "one in each bed";
  const changes = Array.from({ length: count }, (_, at) => (at === 0 ? first : 0));
  return {
    about: [String(count), layout, String(plantsEach), percent(unevenness), percent(lost), changeText(first)],
    trials: TRIALS,
    experiment: several({ ...trial, kind: "gamma", changes }),
  };
}
