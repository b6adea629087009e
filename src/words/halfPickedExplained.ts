import type { Explanation } from "../nouns/explanation";
import type { HalfPicked } from "../nouns/findings/halfPicked";
import { counted } from "./counted";
import { dayText } from "./dayText";
import { halfDaysOf, tellHalfPicked } from "./halfPicked";
import { lookOutFor } from "./lookOutFor";

/** HALFPICKED's finding in plain words (METHODS 9.1). */
export function explainHalfPicked(found: HalfPicked): Explanation {
  const told = tellHalfPicked(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: ["One list of days alone tells nothing of luck."],
    lookOutFor: lookOutFor(found.cautions()),
    next: [
      "To compare two treatments, give their days to COMPARETWO.",
      "If earlier is wanted, give it a worthwhile below zero.",
    ],
    workings: workings(found),
  };
}

function compared({ start, startGiven, yearsKnown }: HalfPicked): string {
  const day = dayText(start, yearsKnown);
  return startGiven
    ? `Days count from ${day}, which is day 0.`
    : `Days count from the first date, ${day}, which is day 0.`;
}

function workings(found: HalfPicked): readonly string[] {
  const { plants } = found;
  const among = (word: string) => plants.filter(({ day }) => day === word).length;
  const [lost, none, unread] = [among("lost"), among("no harvest"), among("not recorded")];
  return [
    `${counted(halfDaysOf(found).length, "plant")} with a day.`,
    ...(lost > 0 ? [`${counted(lost, "plant")} lost.`] : []),
    ...(none > 0 ? [`${counted(none, "plant")} without a harvest.`] : []),
    ...(unread > 0 ? [`${counted(unread, "plant")} without an amount that could be read.`] : []),
    "It is the first date by which half of the plant's own harvest was in.",
  ];
}
