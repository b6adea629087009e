import type { RandomSource } from "../../src/numerics/random";
import { ask } from "./ask";
import type { Experiment } from "./experiment";
import { holds } from "./holds";
import { drawPlant, type PlantKind } from "./plants/drawPlant";

/** Several small trials of one comparison, such as one a crop, as they truly are. */
export interface Seasons {
  readonly kind: PlantKind;
  readonly trials: number;
  /** Of each treatment in every trial. */
  readonly plantsEach: number;
  readonly unevenness: number;
  /** The true change on average, the same in every trial unless it varies. */
  readonly change: number;
  /** By how much the true change itself varies from trial to trial, as an unevenness of the ratio; 0 when left out. */
  readonly varying?: number;
}

/** Crops bear unlike amounts; what they bear does not matter to a ratio. */
const AVERAGES = [800, 3000, 150, 1200, 450, 2200];

/** Takes the averages of several trials and asks MANYTRIALS: "seen" is a verdict up or down. */
export function seasons(truth: Seasons): Experiment {
  return (source) => {
    const rows = Array.from({ length: truth.trials }, (_, at) => averages(truth, at, source));
    const { verdict, changeRange } = ask("MANYTRIALS", "many-trials", {
      usual_averages: rows.map(({ usual }) => usual),
      new_averages: rows.map(({ tried }) => tried),
    });
    return [
      `verdict ${verdict}`,
      ...(/^(up|down)-/.test(verdict) ? ["seen"] : []),
      ...(holds(changeRange, truth.change) ? ["range holds"] : []),
    ];
  };
}

function averages(
  truth: Seasons,
  at: number,
  source: RandomSource,
): { readonly usual: number; readonly tried: number } {
  const { kind, plantsEach, unevenness, change, varying = 0 } = truth;
  const usual = AVERAGES[at % AVERAGES.length] ?? Number.NaN;
  const factor = varying === 0 ? 1 : drawPlant({ kind: "lognormal", mean: 1, unevenness: varying }, source);
  const average = (mean: number) => {
    const plants = Array.from({ length: plantsEach }, () => drawPlant({ kind, mean, unevenness }, source));
    return plants.reduce((sum, plant) => sum + plant, 0) / plantsEach;
  };
  return { usual: average(usual), tried: average(usual * (1 + change) * factor) };
}
