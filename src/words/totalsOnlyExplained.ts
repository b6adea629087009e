import type { Explanation } from "../nouns/explanation";
import type { TotalsOnly, WeighedBecause } from "../nouns/findings/totalsOnly";
import { isKnown } from "../nouns/known";
import { amountText } from "./amount";
import { changeRangeText, namesAnEnd } from "./changeRange";
import { counted } from "./counted";
import { lookOutFor } from "./lookOutFor";
import { percentText } from "./percent";
import { tellTotalsOnly } from "./totalsOnly";

/** TOTALSONLY's finding in plain words (METHODS 9.1). */
export function explainTotalsOnly(found: TotalsOnly): Explanation {
  const told = tellTotalsOnly(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: luck(found),
    lookOutFor: lookOutFor(found.cautions()),
    next: [
      "Next time write one total per plant.",
      "Give each treatment more than one row or bed: with one each, the place may be the cause.",
    ],
    workings: workings(found),
  };
}

function compared({ usual, tried, unit }: TotalsOnly): string {
  if (!isKnown(usual.total) || !isKnown(tried.total)) return "";
  const before = `${amountText(usual.total, unit, 6)} from ${counted(usual.plants, "plant")}`;
  return `Only totals: ${before}, ${amountText(tried.total, unit, 6)} from ${tried.plants}.`;
}

function luck(found: TotalsOnly): readonly string[] {
  const unmeasured = "With no record of each plant, we cannot measure luck.";
  return [`${unmeasured} ${standsOut(found)}`.trim(), bestCase(found.countsOnly)].filter((text) => text !== "");
}

function standsOut({ change, realBelow }: TotalsOnly): string {
  if (change === 0) return "";
  if (isKnown(realBelow)) {
    return `The gap stands out only if like plants differ by less than about ${percentText(realBelow)}.`;
  }
  return realBelow.absent === "luck-of-counting"
    ? "Luck in the counts alone may give such a gap, even with all plants alike."
    : "";
}

/** The range that counting alone gives, with all plants alike: nobody's plants are. */
function bestCase(countsOnly: TotalsOnly["countsOnly"]): string {
  const range = changeRangeText(countsOnly);
  if (range === null || !namesAnEnd(countsOnly)) return "";
  return `If all plants were alike, the counts alone would leave ${range}.`;
}

function workings({ weighed, unevenness, changeRange }: TotalsOnly): readonly string[] {
  const taken = `Unevenness is taken as ${percentText(unevenness)}; no total can show it.`;
  const range = "Range: the log of the ratio, give or take 1.96 standard errors";
  const ranged = isKnown(changeRange.low);
  if (weighed !== null) return [because[weighed], ...(ranged ? [taken, `${range}.`] : [])];
  const counting = "Counts alone: the exact range for two counts (Clopper and Pearson 1934).";
  return [
    ...(ranged ? [taken, `${range}, never less than counting gives (McCullagh and Nelder 1989).`] : []),
    counting,
  ];
}

const because: Readonly<Record<WeighedBecause, string>> = {
  said: "The totals are weights, as you said.",
  unit: "The totals have a unit, so they are taken as measured, not counted.",
  fraction: "The totals are not whole numbers, so they are taken as weights.",
  large: "The totals are above 1000 a plant, so they are taken as weights.",
};
