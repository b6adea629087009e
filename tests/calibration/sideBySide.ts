import type { Cell } from "../../src/nouns/cell";
import type { TwoTreatments } from "../../src/nouns/findings/twoTreatments";
import { isKnown } from "../../src/nouns/known";
import type { RandomSource } from "../../src/numerics/random";
import { type Arguments, ask } from "./ask";
import type { Experiment } from "./experiment";
import { holds } from "./holds";
import { drawPlant, type PlantKind } from "./plants/drawPlant";

/** A trial of two treatments as it truly is. Shares and changes are fractions. */
export interface SideBySide {
  readonly kind: PlantKind;
  /** Plants set out: of the usual, and of the new. */
  readonly plants: readonly [usual: number, tried: number];
  readonly unevenness: readonly [usual: number, tried: number];
  /** The true change. */
  readonly change: number;
  /** The unevenness between beds of one plant each; 0 for separate plants. */
  readonly beds?: number;
  /** How likely each plant is lost, whatever it would have borne. */
  readonly lost?: readonly [usual: number, tried: number];
  readonly options?: Arguments;
  /** Whether the cautions are worked out too: they need refits and label swaps. */
  readonly cautions?: boolean;
}

/** True averages of the usual: grams, or fruit so many that every unevenness from 20 % up is more than chance alone. */
const AVERAGE = { gamma: 1000, lognormal: 1000, counts: 40 } as const;
const ALPHA = 0.05;

/** Sets two treatments side by side and asks COMPARETWO. */
export function sideBySide(trial: SideBySide): Experiment {
  const truth = AVERAGE[trial.kind] * trial.change;
  return (source) => {
    const found = ask("COMPARETWO", "two-treatments", { ...harvest(trial, source), ...trial.options });
    return [
      `verdict ${found.verdict}`,
      `range ${found.rangeVerdict}`,
      ...(isKnown(found.pValue) && found.pValue < ALPHA ? ["told apart"] : []),
      ...(holds(found.changeRange, trial.change) ? ["percent range holds"] : []),
      ...(holds(found.differenceRange, truth) ? ["difference range holds"] : []),
      ...(trial.cautions ? cautionsOf(found) : []),
    ];
  };
}

/** The cautions, and "up, cautioned" where a verdict up comes with more than the one on place and season. */
function cautionsOf(found: TwoTreatments): readonly string[] {
  const cautions = found.cautions().map(({ caution }) => caution);
  const isDoubted = found.verdict.startsWith("up-") && cautions.some((caution) => caution !== "C12");
  return isDoubted ? [...cautions, "up, cautioned"] : cautions;
}

/** The two columns of the grower's sheet. */
export function harvest(trial: SideBySide, source: RandomSource): { readonly usual: Cell[]; readonly new: Cell[] } {
  const [usual, tried] = trial.plants;
  const beds = Array.from({ length: Math.max(usual, tried) }, () => bedFactor(trial, source));
  const column = (side: 0 | 1) =>
    beds.slice(0, trial.plants[side]).map((bed): Cell => {
      if (source.uniform() < (trial.lost?.[side] ?? 0)) return "lost";
      const mean = AVERAGE[trial.kind] * bed * (side === 0 ? 1 : 1 + trial.change);
      return drawPlant({ kind: trial.kind, mean, unevenness: trial.unevenness[side] }, source);
    });
  return { usual: column(0), new: column(1) };
}

/** What a bed makes of its plants' averages. */
function bedFactor({ beds = 0 }: SideBySide, source: RandomSource): number {
  return beds === 0 ? 1 : drawPlant({ kind: "lognormal", mean: 1, unevenness: beds }, source);
}
