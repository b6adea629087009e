import type { Told } from "../nouns/explanation";
import type { WorthIt } from "../nouns/findings/worthIt";
import { isKnown } from "../nouns/known";
import { amountText } from "./amount";
import { moneyText } from "./money";
import { sentences } from "./sentences";
import { withNames } from "./withNames";
import { worthSays } from "./worthSays";

/** WORTHIT's finding as a cell tells it (METHODS 9.1). */
export function tellWorthIt(found: WorthIt): Told {
  return {
    finding: () => sentences(`${worthSays(found.verdict)}.`, extraSentence(found), leftSentence(found)),
    say: () => say(found),
  };
}

/** "Each plant gave 1.2 kg more, worth 3.00." */
function extraSentence({ extra, worth, unit }: WorthIt): string {
  const amount = amountText(Math.abs(extra), unit);
  if (extra === 0) return "There was no extra harvest on average.";
  return `Each plant gave ${amount} ${extra > 0 ? "more" : "less"}, worth ${moneyText(Math.abs(worth))}.`;
}

/** "After 1.10 of extra cost, 1.90 is left. It may be a loss of 0.35 or a gain of 4.15." */
function leftSentence({ extraCost, left, leftRange: { low, high } }: WorthIt): string {
  const cost = `${moneyText(Math.abs(extraCost))} ${extraCost < 0 ? "saved" : "of extra cost"}`;
  const rest = left < 0 ? `${moneyText(-left)} is lost` : `${moneyText(left)} is left`;
  const range = isKnown(low) && isKnown(high) ? `It may be ${gainOrLoss(low, high)}.` : "";
  return sentences(`After ${cost}, ${rest}.`, range);
}

function gainOrLoss(low: number, high: number): string {
  if (low >= 0) return `a gain of ${moneyText(low)} to ${moneyText(high)}`;
  if (high <= 0) return `a loss of ${moneyText(-high)} to ${moneyText(-low)}`;
  return `a loss of ${moneyText(-low)} or a gain of ${moneyText(high)}`;
}

function say(found: WorthIt): string {
  const { verdict, left, leftRange, names } = found;
  const { low, high } = leftRange;
  const money = left < 0 ? `lost ${moneyText(-left)}` : `left ${moneyText(left)}`;
  const made = withNames(names.usual, names.tried, ({ tried }) => `At our prices, ${tried} ${money} a plant here.`);
  if (!isKnown(low) || !isKnown(high)) return `${made} Two averages cannot show whether that was luck.`;
  const range = `The true figure may be ${moneyText(low)} to ${moneyText(high)}.`;
  return verdict === "may-or-may-not" ? `${made} It may or may not pay. ${range}` : `${made} ${range}`;
}
