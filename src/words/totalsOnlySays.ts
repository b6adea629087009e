import type { TotalsOnly } from "../nouns/findings/totalsOnly";
import { isKnown } from "../nouns/known";
import { amountText } from "./amount";
import { counted } from "./counted";
import { percentText, signedPercent } from "./percent";
import { timesBoundText } from "./timesBound";

/** What TOTALSONLY's label "What it says" holds: the whole answer in one cell (METHODS 8.6). */
export function totalsOnlySays(found: TotalsOnly): string {
  const { usual, tried, unit, changeRange, unevenness, nothingIn } = found;
  if (nothingIn !== null) return `No answer: no number in ${nothingIn}`;
  if (!isKnown(usual.total) || !isKnown(tried.total)) return "No answer";
  const { low, high } = changeRange;
  if (!isKnown(low) || !isKnown(high)) {
    if (usual.total === 0 && tried.total === 0) return "No answer: both totals are 0";
    const amounts = `${amountText(tried.total, unit, 6)} from ${counted(tried.plants, "plant")} and ${amountText(usual.total, unit, 6)} from ${usual.plants}`;
    return `${amounts}: ${found.bound === null ? "weights give no more than that" : timesBoundText(found.bound)}.`;
  }
  const range = `at ${percentText(unevenness)} the change may be ${signedPercent(low)} to ${signedPercent(high)}.`;
  return `${realIf(found)}; ${range}`;
}

function realIf({ change, realBelow }: TotalsOnly): string {
  if (change === 0) return "Level per plant";
  if (!isKnown(realBelow)) return "Not settled even if all plants were alike";
  return `Real if plants vary by less than ${percentText(realBelow)}`;
}
