import type { Cell } from "../../src/nouns/cell";
import type { ManyTreatments, TreatmentFound } from "../../src/nouns/findings/manyTreatments";
import { isKnown, type Known } from "../../src/nouns/known";
import type { RandomSource } from "../../src/numerics/random";
import { ask } from "./ask";
import type { Experiment } from "./experiment";
import { holds } from "./holds";
import { drawPlant, type PlantKind } from "./plants/drawPlant";

/** A trial of several treatments as it truly is. Shares and changes are fractions. */
export interface Several {
  readonly kind: PlantKind;
  /** Of each treatment; with beds one in every bed. */
  readonly plantsEach: number;
  readonly unevenness: number;
  /** The true change of every new treatment against the usual. */
  readonly changes: readonly number[];
  /** The unevenness between beds; separate plants when left out. */
  readonly beds?: number;
  /** How likely each plant is lost, whatever it would have borne. */
  readonly lost?: number;
  /** Whether the cautions are worked out too: they need refits. */
  readonly cautions?: boolean;
  /** Whether every pair is compared instead of each new treatment with the usual. */
  readonly allPairs?: boolean;
}

const AVERAGE = 1000;
const ALPHA = 0.05;

/**
 * Sets several treatments side by side and asks COMPAREMANY. What happened is told of all new treatments together, and
 * of the first of them alone ("first up-enough").
 */
export function several(trial: Several): Experiment {
  return (source) => {
    const usual = trial.allPairs ? null : nameOf(0);
    const found = ask("COMPAREMANY", "many-treatments", { ...harvest(trial, source), usual });
    const events = trial.allPairs ? pairEvents(found) : usualEvents(found, trial);
    return trial.cautions ? [...events, ...found.cautions().map(({ caution }) => caution)] : events;
  };
}

function pairEvents(found: ManyTreatments): readonly string[] {
  return [
    ...(found.pairs().some(({ pValue }) => isBelow(pValue, ALPHA)) ? ["some pair told apart"] : []),
    ...(found.pairs().every(({ differenceRange }) => holds(differenceRange, 0)) ? ["all difference ranges hold"] : []),
  ];
}

function usualEvents({ treatments, pAllTogether }: ManyTreatments, { changes }: Several): readonly string[] {
  const compared = changes.map((change, at) => ({ change, found: byName(treatments, nameOf(at + 1)).againstUsual }));
  const some = (start: string) => compared.some(({ found }) => found?.verdict.startsWith(start));
  const all = (range: "changeRange" | "differenceRange", scale: number) =>
    compared.every(({ change, found }) => found !== null && holds(found[range], scale * change));
  return [
    `first ${compared[0]?.found?.verdict}`,
    ...(isBelow(compared[0]?.found?.pValue, ALPHA) ? ["first told apart"] : []),
    ...(some("up-") ? ["some up"] : []),
    ...(some("up-enough") ? ["some up-enough"] : []),
    ...(some("down-") ? ["some down"] : []),
    ...(all("changeRange", 1) ? ["all percent ranges hold"] : []),
    ...(all("differenceRange", AVERAGE) ? ["all difference ranges hold"] : []),
    ...(isBelow(pAllTogether, ALPHA) ? ["told apart together"] : []),
  ];
}

function byName(treatments: readonly TreatmentFound[], name: string): TreatmentFound {
  const found = treatments.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no treatment ${name}`);
  return found;
}

function isBelow(figure: Known | undefined, bar: number): boolean {
  return figure !== undefined && isKnown(figure) && figure < bar;
}

function nameOf(treatment: number): string {
  return treatment === 0 ? "Usual" : `New ${treatment}`;
}

/** The columns of the grower's sheet, treatment by treatment. */
function harvest(trial: Several, source: RandomSource): Readonly<Record<string, Cell[] | null>> {
  const { kind, plantsEach, unevenness, changes, beds = 0, lost = 0 } = trial;
  const factors = Array.from({ length: plantsEach }, () =>
    beds === 0 ? 1 : drawPlant({ kind: "lognormal", mean: 1, unevenness: beds }, source),
  );
  const rows = [0, ...changes].flatMap((change, treatment) =>
    factors.map((factor, bed) => {
      const mean = AVERAGE * (1 + change) * factor;
      const amount = source.uniform() < lost ? "lost" : drawPlant({ kind, mean, unevenness }, source);
      return { amount, treatment: nameOf(treatment), bed: `Bed ${bed + 1}` };
    }),
  );
  return {
    amounts: rows.map(({ amount }) => amount),
    treatments: rows.map(({ treatment }) => treatment),
    beds: beds === 0 ? null : rows.map(({ bed }) => bed),
  };
}
