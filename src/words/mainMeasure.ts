import type { TellableFinding } from "../nouns/report";
import type { TrialNotes } from "../nouns/trialNotes";
import { treatmentNames } from "./treatmentNames";

/** How growers write the units that a column of numbers may name. */
const spellings: Readonly<Record<string, RegExp>> = {
  g: /^(g|gr|gms?|gram(me)?s?)$/i,
  kg: /^(kgs?|kilos?|kilogram(me)?s?)$/i,
  lb: /^(lbs?|pounds?)$/i,
  oz: /^(ozs?|ounces?)$/i,
};

/** What a heading may count beside a treatment's name. */
const counts = /\b(fruit|pod|number|count|day|date|score|hour|percent|share)(?=s?\b)/gi;

/**
 * Whether a result shows the trial's main measure, as far as the notes name its unit. A column that names no unit is
 * taken to show it, unless its heading counts something else, or it is wanted to be less (days until harvest) where the
 * measure is wanted to be more.
 */
export function showsMainMeasure(finding: TellableFinding, { unit, worthwhile }: TrialNotes): boolean {
  if (unit === "" || finding.finding === "many-trials") return false;
  if (finding.unit !== null) return finding.unit === unit || spellings[finding.unit]?.test(unit) === true;
  const lessWanted = "worthwhile" in finding && finding.worthwhile.lessWanted;
  if (lessWanted !== (worthwhile ?? 0) < 0) return false;
  const counted = treatmentNames(finding).flatMap((name) => name.match(counts) ?? []);
  return counted.every((word) => unit.toLowerCase().includes(word.toLowerCase()));
}

/** The finding with the unit of the trial's main measure, where it shows that and its columns name none. */
export function inMainMeasure<Told extends TellableFinding>(finding: Told, notes: TrialNotes): Told {
  if (finding.finding === "many-trials" || finding.unit !== null || !showsMainMeasure(finding, notes)) return finding;
  return { ...finding, unit: notes.unit };
}
