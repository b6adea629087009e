import type { Block, Case } from "../experiment";
import { type Seasons, seasons } from "../seasons";
import { changeText, PROMISED, percent } from "./text";
import { ANY_DOWN, ANY_UP, NOT_SETTLED, verdictShare } from "./verdictShares";

/** Many crops with two plants each: none can settle anything alone, all together can. */
export const manyTrials: Block = {
  title: "Several crops, with two plants of each treatment in every one",
  headings: ["Crops", "Unevenness", "True change", "The change itself varies by"],
  shares: [
    verdictShare("Any up", ANY_UP),
    verdictShare("Any down", ANY_DOWN),
    { heading: "Up or down", events: ["seen"] },
    verdictShare("Leaning", ["leaning-up", "leaning-down"]),
    verdictShare("Not settled or near level", [...NOT_SETTLED, "level"]),
    { heading: "The range holds the true change", events: ["range holds"] },
  ],
  cases: [0, 0.5].flatMap((change) => [
    cropCase({ trials: 2, unevenness: 0.3, change }),
    cropCase({ trials: 4, unevenness: 0.3, change }),
    cropCase({ trials: 6, unevenness: 0.3, change }),
    cropCase({ trials: 6, unevenness: 0.3, change, varying: 0.2 }),
    cropCase({ trials: 6, unevenness: 0.5, change }),
    cropCase({ trials: 10, unevenness: 0.3, change }),
  ]),
  meaning: ({ most }) =>
    `Two plants of each tell nothing in one crop. Six such crops together show a true gain of 50 % in up to ${most("Up or down", "6")} of trials. Where nothing differs they raise a false alarm, up or down, in about 5 % (at most ${most("Up or down", "none")}).`,
};

function cropCase(truth: Omit<Seasons, "kind" | "plantsEach">): Case {
  const { trials, unevenness, change, varying = 0 } = truth;
  return {
    about: [String(trials), percent(unevenness), changeText(change), varying === 0 ? "not at all" : percent(varying)],
    trials: PROMISED,
    experiment: seasons({ ...truth, kind: "gamma", plantsEach: 2 }),
  };
}
