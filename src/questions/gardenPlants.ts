import type { Place } from "../nouns/place";
import type { Plant } from "../nouns/sample";
import type { Labelled } from "../ranges/readLabelled";
import { labelNumbers } from "./labelNumbers";
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
  const [treatmentOf, bedOf] = [labelNumbers(treatments), labelNumbers(beds)];
  const plants: GardenPlant[] = [];
  const leftOut: Place[] = [];
  for (const [at, entry] of sample.entries.entries()) {
    const plant = plantOf(entry, "leave out");
    if (plant === null) continue;
    const [treatment, bed] = [treatmentOf(at), bedOf(at)];
    if (treatment === null || bed === null) leftOut.push(entry.place);
    else plants.push({ ...plant, treatment, treatmentName: treatments?.names[treatment] ?? null, bed });
  }
  return { plants, leftOut };
}
