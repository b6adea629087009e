import type { Explanation } from "../nouns/explanation";
import type { PickCurve, TreatmentCurve } from "../nouns/findings/pickCurve";
import { amountText } from "./amount";
import { counted } from "./counted";
import { dayText } from "./dayText";
import { lookOutFor } from "./lookOutFor";
import { percentText } from "./percent";
import { tellPickCurve } from "./pickCurve";
import { sentenceStart } from "./sentenceStart";
import { shortLabel } from "./shortLabel";

/** PICKCURVE's finding in plain words (METHODS 9.1). */
export function explainPickCurve(found: PickCurve): Explanation {
  const told = tellPickCurve(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: ["A curve alone tells nothing of luck: it adds up the plants."],
    lookOutFor: lookOutFor(found.cautions()),
    next: ["To see if luck may be behind a gap in days, use HALFPICKED and COMPARETWO."],
    workings: [...found.treatments.map((curve) => atTheEnd(curve, found)), ...notPlaced(found)],
  };
}

function compared({ treatments, steps, yearsKnown }: PickCurve): string {
  const [first = 0] = steps;
  const last = steps.at(-1) ?? first;
  const span = `from ${dayText(first, yearsKnown)} (day 0) to ${dayText(last, yearsKnown)} (day ${last - first})`;
  return `Picks of ${counted(treatments.length, "treatment")}, ${span}.`;
}

function atTheEnd({ name, running, lastWeek, setOut }: TreatmentCurve, { unit }: PickCurve): string {
  const end = amountText(running.at(-1) ?? 0, unit);
  const per = setOut === null ? " in all" : ` for each of ${counted(setOut, "plant")} set out`;
  const late = lastWeek === null ? "" : `, ${percentText(lastWeek)} of it in the last week`;
  return `${sentenceStart(shortLabel(name))}: ${end}${per}${late}.`;
}

function notPlaced({ leftOut, weightsMissing }: PickCurve): readonly string[] {
  const were = (count: number) => (count === 1 ? "was" : "were");
  const out =
    leftOut === 0 ? [] : [`${counted(leftOut, "row")} without a treatment or a date ${were(leftOut)} left out.`];
  const missing = weightsMissing === 0 ? [] : [`${counted(weightsMissing, "row")} had no amount that could be read.`];
  return [...out, ...missing];
}
