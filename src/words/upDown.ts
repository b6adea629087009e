import type { Told } from "../nouns/explanation";
import type { UpDown } from "../nouns/findings/upDown";
import { isKnown } from "../nouns/known";
import { absenceText } from "./absence";
import { amountText } from "./amount";
import { counted } from "./counted";
import { gave } from "./gave";
import { moreOrLess } from "./moreOrLess";
import { namesOf } from "./names";
import { percentSize, shownPercent, signedPercent } from "./percent";
import { sentences } from "./sentences";
import { percentOfUsual, timesText, worthTimes } from "./times";
import { withNames } from "./withNames";

/** UPDOWN's finding as a cell tells it (METHODS 9.1). */
export function tellUpDown(found: UpDown): Told {
  return {
    finding: () => (found.single ? timesSentence(found) : sentences(gaveSentence(found), timesSentence(found))),
    say: () => say(found),
  };
}

/** What *show* "short" puts in a cell: "+200 % (3 times)". */
export function shortChange({ change }: UpDown): string {
  if (!isKnown(change)) return absenceText(change);
  return shownPercent(change).points === 0 ? "0 %" : `${signedPercent(change)} (${timesText(change)} times)`;
}

function gaveSentence(found: UpDown): string {
  return withNames(found.names.usual, found.names.tried, (names) => `${gave({ ...found, names })}.`);
}

/** "72 is 3 times 24: up 200 %, not 300 %." */
function timesSentence({ usualMean, triedMean, unit, change, single }: UpDown): string {
  const tried = amountText(triedMean, unit, figures({ single }));
  const usual = amountText(usualMean, unit, figures({ single }));
  if (!isKnown(change)) return `From ${usual} to ${tried} is no percent, because a percent needs a usual above 0.`;
  if (shownPercent(change).points === 0) return `${tried} against ${usual} is a change of 0 %.`;
  if (triedMean === 0) return `0 against ${usual} is down 100 %.`;
  const notThat = worthTimes(change) ? `, not ${percentOfUsual(change)}` : "";
  const direction = change > 0 ? "up" : "down";
  return `${tried} is ${timesText(change)} times ${usual}: ${direction} ${percentSize(change)}${notThat}.`;
}

/** Two single figures are shown as typed, as far as people read them; averages are rounded. */
function figures({ single }: Pick<UpDown, "single">): number {
  return single ? 6 : 3;
}

function say(found: UpDown): string {
  const { unit, single, triedPlants, usualPlants } = found;
  const [triedMean, usualMean] = [found.triedMean, found.usualMean].map((mean) =>
    amountText(mean, unit, figures(found)),
  );
  const each = single ? "" : " a plant";
  const plants = single ? "" : ` (${counted(triedPlants, "plant")} and ${usualPlants})`;
  const change = isKnown(found.change) ? `: ${moreOrLess(found.change) ?? "level"}` : "";
  return withNames(
    found.names.usual,
    found.names.tried,
    ({ usual, tried }) => `We got ${triedMean}${each} from ${tried} and ${usualMean} from ${usual}${plants}${change}.`,
  );
}

export function namesIn({ names }: UpDown): { readonly usual: string; readonly tried: string } {
  return namesOf(names.usual, names.tried);
}
