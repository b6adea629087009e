import type { Place } from "../nouns/place";
import type { Plant } from "../nouns/sample";
import type { Labelled } from "../ranges/readLabelled";
import type { Labels } from "../ranges/readLabels";
import { plantOf } from "./usablePlants";

/** A usable plant with its treatment and bed, each known by its number in order of appearance. */
export interface GardenPlant extends Plant {
  readonly treatment: number;
  readonly treatmentName: string | null;
  readonly bed: number;
}

/** The usable plants of a labelled sample, and where rows stand that have no treatment or bed although others do. */
export interface Garden {
  readonly plants: readonly GardenPlant[];
  readonly leftOut: readonly Place[];
}

/** Puts treatments (the first labels) and beds (the second) to the plants; labels not given count as one for all. */
export function gardenPlants({ sample, labels: [treatments = null, beds = null] }: Labelled): Garden {
  const plants: GardenPlant[] = [];
  const leftOut: Place[] = [];
  for (const [at, entry] of sample.entries.entries()) {
    const plant = plantOf(entry, "leave out");
    if (plant === null) continue;
    const treatment = numberOf(treatments, at);
    const bed = numberOf(beds, at);
    if (treatment < 0 || bed < 0) leftOut.push(entry.place);
    else plants.push({ ...plant, treatment, treatmentName: treatments?.names[treatment] ?? null, bed });
  }
  return { plants, leftOut };
}

/** A row's label as its number among the names; 0 where no labels were given, −1 where the row has none. */
function numberOf(labels: Labels | null, at: number): number {
  if (labels === null) return 0;
  const label = labels.entries[at] ?? null;
  return label === null ? -1 : labels.names.indexOf(label);
}
