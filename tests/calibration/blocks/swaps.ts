import type { Block } from "../experiment";
import { labelSwaps, SWAP_SHARES } from "../labelSwap";
import { percent, TOLD } from "./text";

/** The label-swap p when nothing differs: at most 5 % in 5 of 100 trials, at most half in 50. */
export const swaps: Block = {
  title: "Swapped labels, when nothing differs",
  headings: ["Layout", "Plants of each"],
  shares: SWAP_SHARES.map((share) => ({ heading: `p at most ${percent(share)}`, events: [`swap p at most ${share}`] })),
  cases: [
    ...[4, 6, 8].map((each) => ({
      about: ["separate plants", String(each)],
      trials: TOLD,
      experiment: labelSwaps({ kind: "gamma", plants: [each, each], unevenness: [0.35, 0.35], change: 0 }),
    })),
    ...[6, 8, 12].map((each) => ({
      about: ["beds", String(each)],
      trials: TOLD,
      experiment: labelSwaps({
        kind: "gamma",
        plants: [each, each],
        unevenness: [0.35, 0.35],
        change: 0,
        beds: 0.3,
        options: { how: "beds" },
      }),
    })),
  ],
  meaning: ({ least, most }) =>
    `If nothing differs, the count of swapped labels should come to "5 times in 100 or less" in 5 % of trials. It does so in ${least("p at most 5 %")} to ${most("p at most 5 %")}: few plants allow few swaps, and then it comes up less often.`,
};
