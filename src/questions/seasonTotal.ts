import type { PerPlant } from "../nouns/findings/perPlant";
import { lazy } from "../nouns/lazy";
import type { LostPlants } from "../nouns/lostPlants";
import type { Sample } from "../nouns/sample";
import { type Planted, repeatedLabels } from "./planted";
import { readingCautions } from "./readingCautions";

/** One number typed for all plants of a treatment. */
export interface SeasonTotal {
  readonly sample: Sample;
  readonly planted: Planted;
  readonly rule: LostPlants;
}

/** PERPLANT's finding from a season total: nothing is known of single plants, so both rules give the same. */
export function seasonTotal({ sample, planted, rule }: SeasonTotal, total: number): PerPlant {
  const unknown = { absent: "total-only" } as const;
  const perPlantSetOut = total / planted.plants;
  return {
    finding: "per-plant",
    name: sample.name,
    unit: sample.unit,
    rule,
    fromTotal: true,
    perPlant: perPlantSetOut,
    setOut: planted.plants,
    lost: unknown,
    notRecorded: unknown,
    counted: planted.plants,
    total,
    perSurvivingPlant: unknown,
    perPlantSetOut,
    cautions: lazy(() => [...repeatedLabels(planted), ...readingCautions([sample]), { caution: "C12" }]),
  };
}
