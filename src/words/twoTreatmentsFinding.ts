import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import { amountText } from "./amount";
import { gave } from "./gave";
import { moreOrLess } from "./moreOrLess";
import { sentences } from "./sentences";
import { verdictSentence } from "./verdictSentence";
import { withNames } from "./withNames";

/** COMPARETWO's finding: both averages, the change, and what the range says of it (METHODS 6.1 and 9.1). */
export function twoTreatmentsFinding(found: TwoTreatments): string {
  return sentences(averagesSentence(found), verdictSentence(found));
}

function averagesSentence(found: TwoTreatments): string {
  const { usual, tried, unit } = found;
  if (!isKnown(usual.mean) || !isKnown(tried.mean)) return "No answer.";
  const averages = {
    unit,
    usualMean: usual.mean,
    triedMean: tried.mean,
    usualPlants: usual.plants.length,
    triedPlants: tried.plants.length,
  };
  return withNames(usual.name, tried.name, (names) => `${gave({ ...averages, names })}, so ${gap(found)}.`);
}

/** The change as a percent, or as an amount where there is no percent. */
function gap({ change, difference, unit }: TwoTreatments): string {
  if (isKnown(change)) return moreOrLess(change) ?? "level on average";
  if (!isKnown(difference) || difference === 0) return "level on average";
  return `${amountText(Math.abs(difference), unit)} ${difference > 0 ? "more" : "less"}`;
}
