import type { ManyTreatments, PairFound, TreatmentFound } from "../../nouns/findings/manyTreatments";
import { isKnown, type Known } from "../../nouns/known";
import { absenceText } from "../../words/absence";
import { amountText } from "../../words/amount";
import { counted } from "../../words/counted";
import { signedPercent } from "../../words/percent";
import { plainNumber } from "../../words/plainNumber";
import { pText } from "../../words/pValue";
import { sentenceStart } from "../../words/sentenceStart";
import { shortLabel } from "../../words/shortLabel";
import { treatmentRange } from "../../words/treatmentRange";
import { folded } from "../dom/blocks";
import type { Child } from "../dom/element";
import { type TablePlan, table } from "../dom/table";

/** The treatments of a comparison in a table, and all pairs of them on request. */
export function treatmentsPart(found: ManyTreatments): readonly Child[] {
  if (found.nothingIn !== null) return [];
  const count = (found.treatments.length * (found.treatments.length - 1)) / 2;
  return [table(treatmentTable(found)), folded(`All ${counted(count, "pair")}`, () => [table(pairTable(found))])];
}

/** One column of the table of treatments. */
type Column = readonly [heading: string, cell: (treatment: TreatmentFound) => string];

function treatmentTable(found: ManyTreatments): TablePlan {
  const { treatments, usual, beds, unit } = found;
  const some = (has: (treatment: TreatmentFound) => boolean, column: Column) => (treatments.some(has) ? [column] : []);
  const columns: readonly Column[] = [
    ["Plants", ({ plants }) => plainNumber(plants.length)],
    ...some(({ lost }) => lost.length > 0, ["Lost", ({ lost }) => plainNumber(lost.length)]),
    ["Average", ({ mean, meanBedsRemoved }) => knownText(meanBedsRemoved ?? mean)],
    ...(usual === null ? [] : againstColumns),
    ...some(({ letters }) => letters !== "", ["Letters", ({ letters }) => letters]),
  ];
  return {
    caption: `${averagesText(unit)}, highest first${beds === null ? "" : ", beds removed"}`,
    header: ["Treatment", ...columns.map(([heading]) => heading)],
    rows: treatments.map((treatment) => [
      sentenceStart(shortLabel(treatment.name)),
      ...columns.map(([, cell]) => cell(treatment)),
    ]),
  };
}

const againstColumns: readonly Column[] = [
  ["Change", ({ isUsual, againstUsual: one }) => (isUsual ? "usual" : knownText(one?.change, signedPercent))],
  ["Range", ({ againstUsual: one }) => (one === null ? "" : treatmentRange(one))],
];

function pairTable(found: ManyTreatments): TablePlan {
  return {
    caption: `${averagesText(found.unit)}: the first less the second, with ranges wide enough for all pairs`,
    header: ["Pair", "Gap", "Range", "p"],
    rows: found.pairs().map(pairRow),
  };
}

function pairRow({ higher, lower, difference, differenceRange, pValue }: PairFound): readonly string[] {
  const { low, high } = differenceRange;
  const range = isKnown(low) && isKnown(high) ? `${amountText(low)} to ${amountText(high)}` : knownText(low);
  return [
    `${sentenceStart(shortLabel(higher))} and ${shortLabel(lower)}`,
    knownText(difference),
    range,
    isKnown(pValue) ? pText(pValue).replace(" ", "\u00a0") : "",
  ];
}

function averagesText(unit: string | null): string {
  return unit === null ? "Averages" : `Averages in ${unit}`;
}

function knownText(known: Known | undefined, text: (value: number) => string = (value) => amountText(value)): string {
  if (known === undefined) return "";
  return isKnown(known) ? text(known) : absenceText(known);
}
