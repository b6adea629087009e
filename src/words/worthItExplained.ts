import type { Explanation } from "../nouns/explanation";
import type { WorthIt, WorthVerdict } from "../nouns/findings/worthIt";
import { isKnown } from "../nouns/known";
import type { Verdict } from "../nouns/verdict";
import { amountText } from "./amount";
import { counted } from "./counted";
import { decision } from "./decision";
import { lookOutFor } from "./lookOutFor";
import { moneyText } from "./money";
import { percentText } from "./percent";
import { sentenceStart } from "./sentenceStart";
import { withNames } from "./withNames";
import { tellWorthIt } from "./worthIt";

/** WORTHIT's finding in plain words (METHODS 9.1 and 2.1). */
export function explainWorthIt(found: WorthIt): Explanation {
  const told = tellWorthIt(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: luck(found),
    lookOutFor: lookOutFor(found.cautions()),
    next: [breakEven(found), decisionOf(found), ...nextPlanting(found)],
    workings: workings(found),
  };
}

function compared({ names, single, how, usualPlants, triedPlants, usualMean, triedMean, unit }: WorthIt): string {
  const [before, after] = [amountText(usualMean, unit), amountText(triedMean, unit)];
  const told = withNames(names.usual, names.tried, ({ usual, tried }) => {
    if (single) return `${tried}, ${after} a plant, against ${usual}, ${before}: two single figures.`;
    const size = how === "pairs" ? counted(usualPlants, "pair") : `${triedPlants} and ${counted(usualPlants, "plant")}`;
    return `${tried}, ${after} a plant, against ${usual}, ${before} (${size}).`;
  });
  return sentenceStart(told);
}

function luck({ leftRange, single }: WorthIt): readonly string[] {
  if (isKnown(leftRange.low)) return ["The range comes from differences between plants only, not from prices."];
  return [single ? "Two single figures tell nothing about luck." : "These plants cannot show how far luck reaches."];
}

/** The extra that just pays; a cheaper way may even lose some. */
function breakEven({ breakEvenExtra, breakEvenChange, unit }: WorthIt): string {
  if (breakEvenExtra === 0) return "It costs nothing extra, so any extra harvest pays.";
  const share = isKnown(breakEvenChange) ? ` (${percentText(Math.abs(breakEvenChange))})` : "";
  const amount = `${amountText(Math.abs(breakEvenExtra), unit)}`;
  if (breakEvenExtra < 0) return `It is cheaper: it breaks even with up to ${amount} less per plant${share}.`;
  return `Break-even needs ${amount} more per plant${share}.`;
}

/**
 * The decision table of METHODS 2.1: its left column where the new way costs nothing extra, its right one where it
 * does, with the low end of the money for "WORTHIT's low end". Few plants leave it a hint or less, whatever it pays.
 */
function decisionOf({ verdict, harvest, extraCost, left }: WorthIt): string {
  if (verdict.endsWith("on-averages")) return "Weigh plant by plant next time, to see whether it was luck.";
  const { cheap, costly } = decision(harvest);
  if (extraCost === 0) return `${sentenceStart(cheap)}.`;
  if (hintOnly.has(harvest)) return `${sentenceStart(costly)}.`;
  if (extraCost < 0) return whereItSaves(verdict, left);
  if (verdict === "pays") return "Before you switch all of it, compare side by side once more.";
  if (verdict === "does-not-pay") return "At these prices, drop it or find a cheaper way.";
  if (harvest === "up-enough") return "Try it again. Switch if the low end is above 0 then, or a second season agrees.";
  return harvest === "none" ? "Do not pay for it yet; try again with more plants." : `${sentenceStart(costly)}.`;
}

const hintOnly: ReadonlySet<Verdict> = new Set<Verdict>(["few", "leaning-up", "leaning-down"]);

/** A cheaper way may lose some harvest and still pay, so that the money decides alone. */
function whereItSaves(verdict: WorthVerdict, left: number): string {
  if (verdict === "does-not-pay") return "It saves less than the lost harvest is worth: drop or change the idea.";
  if (verdict === "pays") return "Use it on part, and compare side by side once more.";
  return left < 0 ? "No change on this evidence." : "Your choice: it saves money. It may be worth trying again.";
}

function nextPlanting({ nextPlants, nextPlanting: { low, middle, high } }: WorthIt): readonly string[] {
  if (nextPlants === null || !isKnown(middle)) return [];
  const range = isKnown(low) && isKnown(high) ? `, perhaps ${moneyText(low)} to ${moneyText(high)}` : "";
  return [`For ${counted(nextPlants, "plant")} that makes ${moneyText(middle)}${range}.`];
}

function workings({ price, extraCost, unit, how, leftRange }: WorthIt): readonly string[] {
  const per = unit === null ? "unit of the harvest" : unit;
  const test = how === "pairs" ? "paired t range" : "Welch t range";
  return [
    `Price: ${moneyText(price)} per ${per}. Extra cost: ${moneyText(extraCost)} a plant.`,
    ...(isKnown(leftRange.low) ? [`Range: the 95 % ${test} of the difference, times the price, less the cost.`] : []),
  ];
}
