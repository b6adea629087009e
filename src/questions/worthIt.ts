import { compareMeans, type MeansCompared } from "../methods/compareMeans";
import { type Costs, moneyLeft } from "../methods/moneyLeft";
import { cappedVerdict } from "../methods/verdict";
import type { Caution } from "../nouns/caution";
import type { NextPlanting, WorthIt, WorthVerdict } from "../nouns/findings/worthIt";
import { type Absence, isKnown, type Known, type Limits } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { missing } from "../ranges/option";
import { readChoice } from "../ranges/readChoice";
import { readNumber } from "../ranges/readNumber";
import { readWhole } from "../ranges/readWhole";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { valuesOf } from "./harvest";
import { lossesLeftOut } from "./lossesLeftOut";
import { plantCautions } from "./plantCautions";
import { readingCautions } from "./readingCautions";
import { emptyRange, readTwoGroups } from "./readTwoGroups";
import { USUAL_SIZE } from "./readWorthwhile";
import { verdictOfRange } from "./verdictOfRange";

const CONFIDENCE = 0.95;
const WAYS = ["separate", "pairs"] as const;
const ONE_FIGURE: Absence = { absent: "single-figures" };

/** Does the extra harvest pay for the extra cost? */
export function worthIt(given: Given): WorthIt | Problem {
  const options = allRead({
    price: readPrice(given),
    extraCost: readNumber(given.extra_cost, "extra_cost", missing("extra_cost")),
    how: readChoice(given.how, { argument: "how", allowed: WAYS, fallback: "separate" as const }),
    nextPlants: readWhole(given.next_plants, { argument: "next_plants", low: 1, high: null, fallback: null }),
  });
  if (isProblem(options)) return options;
  const { how } = options;
  const groups = readTwoGroups(given, { how, lostPlants: "leave out", negatives: "refuse" });
  if (isProblem(groups)) return groups;
  const where = emptyRange(groups, "leave out");
  if (where !== null) return { problem: "no-usable-plants", where };
  const [before, after] = [valuesOf(groups.usualPlants), valuesOf(groups.triedPlants)];
  const compared = compareMeans(before, after, { layout: how, confidence: CONFIDENCE });
  const single = groups.usual.entries.length === 1 && groups.tried.entries.length === 1;
  const { usual, tried } = groups;
  return {
    finding: "worth-it",
    names: { usual: usual.name, tried: tried.name },
    unit: usual.unit ?? tried.unit,
    single,
    usualPlants: before.length,
    triedPlants: after.length,
    usualMean: compared.usualMean,
    triedMean: compared.triedMean,
    harvest: cappedVerdict(
      verdictOfRange(compared, USUAL_SIZE),
      how === "pairs" ? { pairs: before.length } : { usual: before.length, tried: after.length },
    ),
    cautions: lazy((): readonly Caution[] => [
      { caution: "C25" },
      ...(single ? [] : plantCautions({ usual: groups.usualPlants, tried: groups.triedPlants, how, g: compared.g })),
      ...lossesLeftOut(usual, tried, compared.change),
      ...readingCautions([usual, tried]),
      { caution: "C12" },
    ]),
    ...options,
    ...figures(compared, single, options),
  };
}

function readPrice(given: Given): number | Problem {
  const price = readNumber(given.price, "price", missing("price"));
  return typeof price === "number" && price <= 0 ? { problem: "price-not-above-zero", given: price } : price;
}

type Figures = Pick<
  WorthIt,
  | "verdict"
  | "extra"
  | "worth"
  | "left"
  | "leftRange"
  | "costOfExtra"
  | "breakEvenExtra"
  | "breakEvenChange"
  | "nextPlanting"
>;

function figures(
  { usualMean, triedMean, differenceRange: { low, high } }: MeansCompared,
  single: boolean,
  costs: Costs & { readonly nextPlants: number | null },
): Figures {
  const extra = triedMean - usualMean;
  const range = isKnown(low) && isKnown(high) ? { low, high } : null;
  const { worth, left, leftRange, costOfExtra, breakEvenExtra, breakEvenChange } = moneyLeft(
    { extra, range, usualMean },
    costs,
  );
  const limits = leftRange ?? (single ? { low: ONE_FIGURE, high: ONE_FIGURE } : { low, high });
  return {
    verdict: verdictOf(left, leftRange),
    extra,
    worth,
    left,
    leftRange: limits,
    costOfExtra: knownOr(costOfExtra, { absent: "no-extra" }),
    breakEvenExtra,
    breakEvenChange: knownOr(breakEvenChange, { absent: "usual-not-above-zero" }),
    nextPlanting: nextPlanting(left, limits, costs.nextPlants),
  };
}

function knownOr(figure: number, absence: Absence): Known {
  return Number.isNaN(figure) ? absence : figure;
}

function verdictOf(left: number, range: { readonly low: number; readonly high: number } | null): WorthVerdict {
  if (range === null) return left > 0 ? "pays-on-averages" : "does-not-pay-on-averages";
  if (range.low > 0) return "pays";
  return range.high < 0 ? "does-not-pay" : "may-or-may-not";
}

function nextPlanting(left: number, { low, high }: Limits, plants: number | null): NextPlanting {
  const whole = (perPlant: Known): Known => {
    if (plants === null) return { absent: "no-next-planting" };
    return isKnown(perPlant) ? perPlant * plants : perPlant;
  };
  return { low: whole(low), middle: whole(left), high: whole(high) };
}
