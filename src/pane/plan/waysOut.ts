import type { Desk } from "../../answers/desk";
import { outOfHundred } from "../../words/chance";
import { counted } from "../../words/counted";
import { percentText } from "../../words/percent";
import { chancesOf } from "./planFigures";
import { type PlanQuestion, plantsEach } from "./planQuestion";

/** What beds of like plants may take away from the unevenness: a fifth, said to be a guess. */
const bedGain = 0.8;

/** What else the grower can do when a plan is unlikely to show the change hoped for, each with its figure. */
export function waysOut(desk: Desk, question: PlanQuestion): readonly string[] {
  return [
    ...fewerTreatments(desk, question),
    ...inBeds(desk, question),
    ...secondSeason(desk, question),
    demonstration,
  ];
}

const demonstration = "Call it a demonstration: show what you saw, say how many plants, and leave the question open.";

function fewerTreatments(desk: Desk, question: PlanQuestion): readonly string[] {
  if (question.ways === 2) return [];
  const fewer = { ...question, ways: 2 };
  const each = plantsEach(fewer);
  return withChance(desk, fewer, { each, text: `Compare 2 only, ${counted(each, "plant")} each` });
}

function inBeds(desk: Desk, question: PlanQuestion): readonly string[] {
  if (question.beds !== "none") return [];
  const unevenness = question.unevenness * bedGain;
  const grouped: PlanQuestion = { ...question, beds: "one each", unevenness };
  const gain = `If that brings ${percentText(question.unevenness)} down to ${percentText(unevenness)}`;
  return withChance(desk, grouped, {
    each: plantsEach(grouped),
    text: `Put one of each in every bed of like plants. ${gain}`,
  });
}

function secondSeason(desk: Desk, question: PlanQuestion): readonly string[] {
  return withChance(desk, question, {
    each: 2 * plantsEach(question),
    text: "Grow the same trial for a second season. Both together",
  });
}

function withChance(
  desk: Desk,
  question: PlanQuestion,
  { each, text }: { readonly each: number; readonly text: string },
): readonly string[] {
  if (each < 2) return [];
  const chances = chancesOf(desk, question, each);
  return typeof chances === "string" ? [] : [`${text}: a chance of ${outOfHundred(chances.chanceToSee)} in 100.`];
}
