import type { HowTwo, TwoTreatments } from "../nouns/findings/twoTreatments";
import { counted } from "./counted";
import { plainNumber } from "./plainNumber";

/**
 * What COMPARETWO's label "Method" holds: the test, whether labels were swapped in every way or drawn by lot, and the
 * incomplete pairs left out. Also among the pane's workings.
 */
export function methodText(found: TwoTreatments): string {
  return [tests[found.how], swapText(found), lostText(found), incompleteText(found)]
    .filter((part) => part !== "")
    .join("; ");
}

const tests: Readonly<Record<HowTwo, string>> = {
  separate: "Welch t test, separate plants",
  pairs: "paired t test",
  "equal unevenness": "Student t test, equal unevenness",
  ranks: "rank-sum test for p, ranges by Welch t test",
  "pairs ranks": "signed-rank test for p, ranges by paired t test",
};

function swapText({ labelSwap, pairs }: TwoTreatments): string {
  const swap = labelSwap();
  if (swap === null) return "";
  const tried = plainNumber(swap.tried);
  const what = pairs === null ? "label swap" : "label swap within pairs";
  return swap.exact ? `${what} exact, all ${tried} ways` : `${what} drawn by lot, ${tried} ways`;
}

function lostText({ lostPlants, usual, tried }: TwoTreatments): string {
  return lostPlants === "count as zero" && usual.lost.length + tried.lost.length > 0 ? "lost plants count as zero" : "";
}

function incompleteText({ pairs, asked }: TwoTreatments): string {
  if (pairs === null || pairs.incomplete === 0) return "";
  return `${counted(pairs.incomplete, `incomplete ${asked === "beds" ? "bed" : "pair"}`)} left out`;
}
