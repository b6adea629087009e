import { countRatio, type RatioRange } from "../methods/countRatio";
import { perPlant, totalsRatio, unevennessToBeReal } from "../methods/totalsRatio";
import type { Caution } from "../nouns/caution";
import type { TimesBound, TotalFound, TotalsOnly, WeighedBecause } from "../nouns/findings/totalsOnly";
import { type Absence, isKnown, type Known, type Limits } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { readChoice } from "../ranges/readChoice";
import { readFraction } from "../ranges/readFraction";
import { sameUnit } from "../ranges/sameUnit";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { GENERAL_UNEVENNESS } from "./planBasis";
import { readingCautions } from "./readingCautions";
import { readTotal, type TotalRead } from "./readTotal";

const CONFIDENCE = 0.95;
/** More than so many per plant are grams, not fruit. */
const MOST_FRUIT = 1000;
const MEASURES = ["count", "weight"] as const;

/** What do two season totals say, when no record of each plant was kept? */
export function totalsOnly(given: Given): TotalsOnly | Problem {
  const read = allRead({
    usual: readTotal(totalOf(given, "usual")),
    tried: readTotal(totalOf(given, "new")),
    unevenness: readFraction(given.unevenness, "unevenness", null),
    measure: readChoice(given.measure, { argument: "measure", allowed: MEASURES, fallback: null }),
  });
  if (isProblem(read)) return read;
  const { usual, tried, unevenness, measure } = read;
  const unlike = sameUnit(usual.sample, tried.sample);
  if (unlike !== null) return unlike;
  const weighed = weighedBecause(usual, tried, measure);
  const taken = unevenness ?? GENERAL_UNEVENNESS;
  const nothing = [usual, tried].find(({ total }) => total === null);
  const figures = compared(usual, tried, { weighed: weighed !== null, unevenness: taken });
  const { change } = figures;
  return {
    finding: "totals-only",
    usual: totalFound(usual),
    tried: totalFound(tried),
    unit: usual.sample.unit ?? tried.sample.unit,
    weighed,
    unevenness: taken,
    unevennessGiven: unevenness !== null,
    nothingIn: nothing?.sample.where ?? null,
    cautions: lazy((): readonly Caution[] => [
      { caution: "C13" },
      ...(isKnown(change) && change > 1 ? [{ caution: "C16", change } as const] : []),
      ...(unevenness === null && isKnown(change) ? [{ caution: "C27", unevenness: taken } as const] : []),
      ...readingCautions([usual.sample, tried.sample]),
      { caution: "C12" },
    ]),
    ...figures,
  };
}

function totalOf(given: Given, role: "usual" | "new") {
  const [totalName, plantsName] = [`${role}_total`, `${role}_plants`];
  return { total: given[totalName], totalName, plants: given[plantsName], plantsName };
}

function totalFound({ sample: { name }, total, plants }: TotalRead): TotalFound {
  const none = { absent: "no-usable-plants" } as const;
  return total === null
    ? { name, total: none, plants, perPlant: none }
    : { name, total, plants, perPlant: total / plants };
}

/** Why the totals cannot be counts; null when they can. */
function weighedBecause(
  usual: TotalRead,
  tried: TotalRead,
  measure: (typeof MEASURES)[number] | null,
): WeighedBecause | null {
  const totals = [usual, tried];
  if (measure === "weight") return "said";
  if (totals.some(({ total }) => total !== null && !Number.isInteger(total))) return "fraction";
  if (measure === "count") return null;
  if (totals.some(({ sample }) => sample.unit !== null)) return "unit";
  return totals.some(({ total, plants }) => total !== null && total > MOST_FRUIT * plants) ? "large" : null;
}

type Figures = Pick<TotalsOnly, "change" | "changeRange" | "realBelow" | "countsOnly" | "bound">;

/** Figures of two totals; a missing one leaves none. */
function compared(
  usual: TotalRead,
  tried: TotalRead,
  { weighed, unevenness }: { readonly weighed: boolean; readonly unevenness: number },
): Figures {
  if (usual.total === null || tried.total === null) return withoutFigures({ absent: "no-usable-plants" });
  const [before, after] = [
    { total: usual.total, plants: usual.plants },
    { total: tried.total, plants: tried.plants },
  ];
  const counted = weighed ? null : countRatio(before, after, CONFIDENCE);
  const countsOnly = counted === null ? both({ absent: "weights" }) : limitsOf(counted);
  if (before.total === 0 || after.total === 0) {
    return { ...withoutFigures({ absent: "zero-total" }), countsOnly, bound: boundOf(before.total, counted) };
  }
  const range = totalsRatio(before, after, { unevenness, counts: !weighed, confidence: CONFIDENCE });
  const reachable = counted === null || counted.low > 1 || counted.high < 1;
  return {
    change: perPlant(after) / perPlant(before) - 1,
    changeRange: { low: range.low - 1, high: range.high - 1 },
    realBelow: reachable ? unevennessToBeReal(before, after, CONFIDENCE) : { absent: "luck-of-counting" },
    countsOnly,
    bound: null,
  };
}

function withoutFigures(why: Absence): Figures {
  return { change: why, changeRange: both(why), realBelow: why, countsOnly: both(why), bound: null };
}

function both(why: Absence): Limits {
  return { low: why, high: why };
}

function limitsOf({ low, high }: RatioRange): Limits {
  if (Number.isNaN(low)) return both({ absent: "zero-total" });
  const [bottom, top]: [Known, Known] = [low - 1, high - 1];
  return {
    low: low === 0 ? { absent: "no-lower-limit" } : bottom,
    high: high === Number.POSITIVE_INFINITY ? { absent: "no-upper-limit" } : top,
  };
}

/** What one total of 0 still says; null for weights and for two totals of 0. */
function boundOf(usualTotal: number, counted: RatioRange | null): TimesBound | null {
  if (counted === null || Number.isNaN(counted.low)) return null;
  return usualTotal === 0 ? { end: "at least", times: counted.low } : { end: "at most", times: counted.high };
}
