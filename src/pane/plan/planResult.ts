import type { Desk } from "../../answers/desk";
import { outOfHundred } from "../../words/chance";
import { counted } from "../../words/counted";
import { percentText, signedPercent } from "../../words/percent";
import { list, section } from "../dom/blocks";
import { type Child, element } from "../dom/element";
import { unbroken } from "../dom/unbroken";
import { draw } from "../plots/draw";
import { planPicture } from "../plots/plan";
import { fairChance, type PlanFigures, planFigures } from "./planFigures";
import type { PlanQuestion } from "./planQuestion";
import { waysOut } from "./waysOut";

/** What a plan can show, in words, figures and a picture. */
export interface PlanResult {
  readonly children: readonly Child[];
  /** The finding alone, for a screen reader. */
  readonly says: string;
}

/** The result; a plan that the desk refuses, or that has too little room, shows the sentence that says why. */
export function planResult(desk: Desk, question: PlanQuestion): PlanResult {
  const figures = planFigures(desk, question);
  if (typeof figures === "string") return noPlan(figures);
  if (figures === null)
    return noPlan("There is room for fewer than 2 plants each. Compare fewer, use fewer beds, or find more room.");
  const says = findingOf(figures, question);
  const picture = planPicture({
    points: figures.curve,
    mine: { plantsEach: figures.plantsEach, change: figures.smallest },
    hoped: question.hoped,
  });
  return {
    says,
    children: [
      element("p", { class: "finding" }, unbroken(says)),
      chancesTable(figures, question),
      picture === null ? null : draw(picture).root,
      neededLine(figures, question),
      waysOutPart(desk, figures, question),
    ],
  };
}

function noPlan(says: string): PlanResult {
  return { says, children: [element("p", { class: "finding" }, unbroken(says))] };
}

function findingOf({ plantsEach, smallest }: PlanFigures, { hoped }: PlanQuestion): string {
  const plants = `${counted(plantsEach, "plant")} each`;
  if (smallest === null) return `${plants} cannot show any change you may hope for.`;
  const smaller = Math.abs(smallest) <= Math.abs(hoped);
  const judged = smaller ? "The change you hope for is big enough." : "The change you hope for may be missed.";
  return `${plants} show a change of ${signedPercent(smallest)} or more in 80 of 100 such trials. ${judged}`;
}

function chancesTable({ plantsEach, chanceToSee, chanceEnough }: PlanFigures, question: PlanQuestion): HTMLElement {
  const rows = [
    ["Plants each", String(plantsEach)],
    [`Chance to see a true ${signedPercent(question.hoped)}`, `${outOfHundred(chanceToSee)} in 100`],
    [`Chance to find it above ${percentText(Math.abs(question.worthwhile))}`, `${outOfHundred(chanceEnough)} in 100`],
  ] as const;
  const items = rows.flatMap(([name, value]) => [element("dt", {}, name), element("dd", {}, value)]);
  return element("dl", {}, ...items);
}

function neededLine({ needed }: PlanFigures, { hoped, ways }: PlanQuestion): Child {
  const change = signedPercent(hoped);
  if (needed === null) return element("p", {}, `To see ${change} in 80 of 100 such trials is not practical.`);
  const all = counted(needed * ways, "plant");
  return element(
    "p",
    {},
    `To see ${change} in 80 of 100 such trials, set out ${needed} each, ${all} in all. That allows for 10 % lost.`,
  );
}

function waysOutPart(desk: Desk, { chanceToSee }: PlanFigures, question: PlanQuestion): Child {
  if (chanceToSee >= fairChance) return null;
  const told = element("p", {}, "This plan is more likely to miss the change than to see it.");
  return section("Ways out", [told, list(waysOut(desk, question))]);
}
