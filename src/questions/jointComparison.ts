import { additiveModel } from "../methods/additiveModel";
import { againstUsualTest, type JointTest } from "../methods/againstUsualTest";
import { allPairsTest } from "../methods/allPairsTest";
import { ALPHA } from "../methods/alpha";
import { changeOf } from "../methods/compareMeans";
import { allDuos, contrast, type Duo } from "../methods/contrast";
import { type Description, describe } from "../methods/describe";
import { modelRatio } from "../methods/modelRatio";
import { oneWayModel } from "../methods/oneWayModel";
import { ownSpreadBelow, ownSpreadPair } from "../methods/ownSpreadPair";
import { percentRange } from "../methods/percentRange";
import type { TreatmentModel } from "../methods/treatmentModel";
import { cappedVerdict, rangeVerdict, type VerdictBasis } from "../methods/verdict";
import type { AgainstUsual } from "../nouns/findings/manyTreatments";
import { type Absence, isKnown, type Known } from "../nouns/known";
import { type Lazy, lazy } from "../nouns/lazy";
import { valuesOf } from "./harvest";
import type { ManyAsked } from "./manyAsked";
import type { ManyGroups } from "./manyGroups";

/** All comparisons of one trial: one model, one allowance for how many are made. */
export interface JointComparison {
  /** The numbers of the treatments that have plants, in the model's order. */
  readonly treatments: readonly number[];
  readonly model: TreatmentModel;
  /** Why nothing can be tested: no plant varies, or too few plants are left; null when all is well. */
  readonly untested: Absence | null;
  /** The comparisons shown, by places in `treatments`: each with the usual where one is named, else all pairs. */
  readonly duos: readonly Duo[];
  /** What judges the comparisons made together; null with own unevenness, and where nothing can be tested. */
  readonly test: Lazy<JointTest | null>;
  /** A treatment against the usual, by its number among all; null where it has no plants. */
  readonly againstUsual: (treatment: number) => AgainstUsual | null;
  /** Whether the p-value of such a comparison is below a level: quicker than the comparison. Null where it has none. */
  readonly isBelow: (treatment: number, level: number) => boolean | null;
  /** Any two, by their places in `treatments`, all pairs allowed for. */
  readonly pair: (duo: Duo) => AgainstUsual;
}

/** Fits the model of a trial in which two treatments or more have plants that beds, if given, link. */
export function jointComparison(groups: ManyGroups, asked: ManyAsked, usable: readonly number[]): JointComparison {
  const values = usable.map((at) => valuesOf(groups.plants.filter(({ treatment }) => treatment === at)));
  const model = (groups.beds === null ? null : bedModel(groups, usable)) ?? oneWayModel(values);
  const untested = whyUntested(model, values);
  const usual = asked.usual === null ? -1 : usable.indexOf(asked.usual);
  const own = lazy(() => (asked.how === "own unevenness" ? values.map(describe) : null));
  const allPairs = lazy(() => allPairsTest(model));
  const fixed = lazy(() => (asked.how === "all pairs" ? allPairs() : againstUsualTest(model, usual)));
  const compare = (duo: Duo, test: () => JointTest): AgainstUsual => {
    if (untested !== null) return untestedAt(model, duo, untested);
    const apart = own();
    const figures = apart === null ? pooled(model, duo, test()) : ownSpread(apart, duo);
    return withVerdict(figures, asked, basisOf(groups, usable, duo));
  };
  const below = (duo: Duo, level: number): boolean | null => {
    if (untested !== null) return null;
    const apart = own();
    return apart === null ? fixed().isBelow(contrast(model, duo).t, level) : ownBelow(apart, duo, level);
  };
  const withUsual = <Answer>(treatment: number, answer: (duo: Duo) => Answer): Answer | null => {
    const tried = usable.indexOf(treatment);
    return tried < 0 || usual < 0 ? null : answer({ usual, tried });
  };
  return {
    treatments: usable,
    model,
    untested,
    duos: usual < 0 ? allDuos(usable.length) : againstTheUsual(usable.length, usual),
    test: () => (untested === null && own() === null ? fixed() : null),
    againstUsual: (treatment) => withUsual(treatment, (duo) => compare(duo, fixed)),
    isBelow: (treatment, level) => withUsual(treatment, (duo) => below(duo, level)),
    pair: (duo) => compare(duo, allPairs),
  };
}

function againstTheUsual(count: number, usual: number): readonly Duo[] {
  return Array.from({ length: count }, (_, tried) => ({ usual, tried })).filter(({ tried }) => tried !== usual);
}

function bedModel({ plants }: ManyGroups, usable: readonly number[]): TreatmentModel | null {
  const beds = new Map([...new Set(plants.map(({ bed }) => bed))].map((bed, at) => [bed, at]));
  if (beds.size < 2) return null;
  return additiveModel(
    plants.map(({ value, treatment, bed }) => ({
      value,
      treatment: usable.indexOf(treatment),
      bed: beds.get(bed) ?? 0,
    })),
  );
}

/** Under two degrees of freedom there are averages only. */
function whyUntested(
  { df, meanSquare, means }: TreatmentModel,
  values: readonly (readonly number[])[],
): Absence | null {
  if (df < 2) return { absent: "too-few-plants" };
  const largest = [means, ...values].flat().reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return Math.sqrt(meanSquare) <= 10 * Number.EPSILON * largest ? { absent: "all-equal" } : null;
}

type Figures = Omit<AgainstUsual, "verdict" | "rangeVerdict"> & { readonly why: Absence | null };

function pooled(model: TreatmentModel, duo: Duo, { pValue, critical }: JointTest): Figures {
  const { difference, standardError, t } = contrast(model, duo);
  const p = pValue(t);
  const range = percentRange(modelRatio(model, duo, critical), p < ALPHA);
  const reach = critical * standardError;
  return {
    difference,
    differenceRange: { low: difference - reach, high: difference + reach },
    change: changeIn(model, duo),
    changeRange: { low: range.low, high: range.high },
    pValue: p,
    why: null,
  };
}

function changeIn({ means }: TreatmentModel, { usual, tried }: Duo): Known {
  return changeOf(means[usual] ?? Number.NaN, means[tried] ?? Number.NaN);
}

function ownBelow(groups: readonly Description[], { usual, tried }: Duo, level: number): boolean | null {
  const [before, after] = [groups[usual]?.summary, groups[tried]?.summary];
  return before === undefined || after === undefined ? null : ownSpreadBelow([before, after], groups.length, level);
}

function ownSpread(groups: readonly Description[], { usual, tried }: Duo): Figures {
  const [before, after] = [(groups[usual] ?? describe([])).summary, (groups[tried] ?? describe([])).summary];
  const found = ownSpreadPair(before, after, groups.length);
  const difference = after.mean - before.mean;
  const change = changeOf(before.mean, after.mean);
  if (found === null) {
    const why: Absence = { absent: Math.min(before.n, after.n) < 2 ? "one-plant" : "all-equal" };
    const none = { low: why, high: why };
    return { difference, differenceRange: none, change, changeRange: none, pValue: why, why };
  }
  const range = percentRange(found.curve, found.pValue < ALPHA);
  return {
    difference,
    differenceRange: { low: found.low, high: found.high },
    change,
    changeRange: { low: range.low, high: range.high },
    pValue: found.pValue,
    why: null,
  };
}

function untestedAt(model: TreatmentModel, { usual, tried }: Duo, why: Absence): AgainstUsual {
  const [before, after] = [model.means[usual] ?? Number.NaN, model.means[tried] ?? Number.NaN];
  const none = { low: why, high: why };
  const verdict = why.absent === "all-equal" ? "none" : "few";
  const change = changeOf(before, after);
  return {
    difference: after - before,
    differenceRange: none,
    change,
    changeRange: none,
    pValue: why,
    rangeVerdict: null,
    verdict,
  };
}

function withVerdict({ why, ...figures }: Figures, { worthwhile }: ManyAsked, basis: VerdictBasis): AgainstUsual {
  const { change, changeRange } = figures;
  const range = why ?? (isKnown(change) ? rangeVerdict(changeRange.low, changeRange.high, worthwhile.size) : change);
  return { ...figures, rangeVerdict: typeof range === "string" ? range : null, verdict: cappedVerdict(range, basis) };
}

/** Separate plants count by themselves; in beds, the beds that hold both; two treatments in beds are pairs. */
export function basisOf({ plants, beds }: ManyGroups, usable: readonly number[], duo: Duo): VerdictBasis {
  const of = (place: number) => plants.filter(({ treatment }) => treatment === usable[place]);
  const [before, after] = [of(duo.usual), of(duo.tried)];
  if (beds === null) return { usual: before.length, tried: after.length };
  const shared = beds.filter((_, at) => [before, after].every((group) => group.some(({ bed }) => bed === at))).length;
  return usable.length === 2 ? { pairs: shared } : { usual: shared, tried: shared };
}
