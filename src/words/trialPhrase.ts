import type { TellableFinding } from "../nouns/report";
import type { TrialNotes } from "../nouns/trialNotes";
import { showsMainMeasure } from "./mainMeasure";
import { shorterLabel } from "./shortLabel";

/** So few words of each, that the sentence around them stays within 25. */
const mostWords = 4;

/**
 * What was measured, where and when, as far as the trial's notes tell: "grams of courgettes per plant, Marlpit Corner,
 * 2023". The unit alone tells too little: "" where crop, place and season are missing.
 */
export function trialPhrase(finding: TellableFinding, notes: TrialNotes): string {
  const [crop, unit, place, season] = [notes.crop, notes.unit, notes.place, notes.season].map((text) =>
    shorterLabel(text, mostWords),
  ) as [string, string, string, string];
  if (crop === "" && place === "" && season === "") return "";
  const amounts = showsMainMeasure(finding, notes) ? `${unit}${crop === "" ? "" : ` of ${crop}`} per plant` : crop;
  return [amounts, place, season].filter((part) => part !== "").join(", ");
}
