import type { Block, Case } from "../experiment";
import { sideBySide } from "../sideBySide";
import { changeText, percent, TOLD } from "./text";
import { ANY_DOWN, ANY_UP, NOT_SETTLED, verdictShare } from "./verdictShares";

type Rule = "leave out" | "count as zero";

/** Eight plants of each set out, some lost by accident: whatever they would have borne. */
export const lostPlants: Block = {
  title: "Lost plants",
  headings: ["Lost, usual", "Lost, new", "Lost plants", "True change of a living plant"],
  shares: [
    verdictShare("Any up", ANY_UP),
    verdictShare("Any down", ANY_DOWN),
    verdictShare("Not settled", NOT_SETTLED),
    verdictShare("Leaning or too few", ["leaning-up", "leaning-down", "few", "none"]),
    { heading: "Percent range holds the true change", events: ["percent range holds"] },
  ],
  cases: [
    lossCase([0.2, 0.2], "leave out", 0),
    lossCase([0.2, 0.2], "leave out", 0.5),
    lossCase([0, 0.3], "leave out", 0),
    lossCase([0, 0.3], "leave out", 0.5),
    lossCase([0.2, 0.2], "count as zero", 0),
    lossCase([0, 0.3], "count as zero", 0),
  ],
  meaning: () =>
    "Plants lost by accident and left out do no harm beyond their number. Counted as zero, more losses in one treatment look like a lower yield: right if the treatment killed them, wrong if the wheelbarrow did.",
};

function lossCase(lost: readonly [number, number], rule: Rule, change: number): Case {
  const trial = { kind: "gamma", plants: [8, 8], unevenness: [0.35, 0.35], lost, change } as const;
  return {
    about: [percent(lost[0]), percent(lost[1]), rule, changeText(change)],
    trials: TOLD,
    experiment: sideBySide({ ...trial, options: { lost_plants: rule } }),
  };
}
