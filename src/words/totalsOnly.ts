import type { Told } from "../nouns/explanation";
import type { TotalsOnly } from "../nouns/findings/totalsOnly";
import { isKnown } from "../nouns/known";
import { amountText } from "./amount";
import { changeRangeText } from "./changeRange";
import { counted } from "./counted";
import { gave } from "./gave";
import { moreOrLess } from "./moreOrLess";
import { percentText } from "./percent";
import { sentences } from "./sentences";
import { timesBoundText } from "./timesBound";
import { withNames } from "./withNames";

/** TOTALSONLY's finding as a cell tells it. */
export function tellTotalsOnly(found: TotalsOnly): Told {
  return { finding: () => sentences(averages(found), ifPlantsDiffer(found)), say: () => say(found) };
}

/** Both averages and the change; with a total of 0 both amounts and the one end that is left. */
function averages(found: TotalsOnly): string {
  const { usual, tried, unit, change, bound, nothingIn } = found;
  if (!isKnown(usual.perPlant) || !isKnown(tried.perPlant)) return `No answer: there is no number in ${nothingIn}.`;
  if (usual.total === 0 && tried.total === 0) return "No answer: both totals are 0.";
  const perPlant = {
    unit,
    usualMean: usual.perPlant,
    triedMean: tried.perPlant,
    usualPlants: usual.plants,
    triedPlants: tried.plants,
  };
  const both = (end: string) => withNames(usual.name, tried.name, (names) => `${gave({ ...perPlant, names })}${end}.`);
  if (isKnown(change)) return both(`, so ${moreOrLess(change) ?? "level on average"}`);
  if (bound === null) return sentences(both(""), "A total of 0 gives no percent.");
  return sentences(both(""), `By counting alone, that is ${timesBoundText(bound)}.`);
}

/** The range under the unevenness taken: "If plants treated alike differ by 35 %, the true change may be …". */
function ifPlantsDiffer({ changeRange, unevenness }: TotalsOnly): string {
  const range = changeRangeText(changeRange);
  const taken = `If plants treated alike differ by ${percentText(unevenness)}`;
  return range === null ? "" : `${taken}, the true change may be ${range}.`;
}

function say({ usual, tried, unit, change }: TotalsOnly): string {
  if (!isKnown(usual.total) || !isKnown(tried.total)) return "We have no answer this season.";
  if (usual.total === 0 && tried.total === 0) return "We have no answer this season. Both totals are 0.";
  const fromTried = `${amountText(tried.total, unit, 6)} from ${counted(tried.plants, "plant")}`;
  const fromUsual = `${amountText(usual.total, unit, 6)} from ${usual.plants}`;
  const got = withNames(
    usual.name,
    tried.name,
    (names) => `We got ${fromTried} of ${names.tried} and ${fromUsual} of ${names.usual}.`,
  );
  const perPlant = isKnown(change) ? `Per plant that is ${moreOrLess(change) ?? "level"}, but` : "But";
  return `${got} ${perPlant} totals cannot show whether it was luck.`;
}
