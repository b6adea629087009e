import type { Caution, Loss } from "../nouns/caution";
import { isKnown } from "../nouns/known";
import { listText } from "./list";
import { signedPercent } from "./percent";
import { sentences } from "./sentences";
import { shortLabel } from "./shortLabel";

type LossCaution = Extract<Caution, { caution: "C03" }>;

/** C03: how many plants of each treatment were lost, and what counting them as zero makes of the change. */
export function lossSentences(caution: LossCaution): string {
  return sentences(`Plants lost: ${listText(caution.losses.map(lossText))}.`, countingSentence(caution));
}

function lossText({ name, role, lost, setOut }: Loss): string {
  const label = shortLabel(name ?? "");
  return `${lost} of ${setOut} ${label === "" ? `of the ${role}` : label}`;
}

function countingSentence({ change, changeLostAsZero, countedAsZero }: LossCaution): string {
  if (countedAsZero) return "Here a lost plant counts as zero.";
  if (!isKnown(change) || !isKnown(changeLostAsZero)) return "";
  const asZero = signedPercent(changeLostAsZero);
  const leftOut = signedPercent(change);
  if (asZero === leftOut) return `If a lost plant counts as zero, the change is still ${leftOut}.`;
  return `If a lost plant counts as zero, the change is ${asZero}, not ${leftOut}.`;
}
