import type { LostPlants } from "../nouns/lostPlants";
import type { Place } from "../nouns/place";
import type { Entry, Plant, Sample } from "../nouns/sample";
import type { Labelled } from "../ranges/readLabelled";
import { isBlank } from "./isBlank";
import { labelNumbers } from "./labelNumbers";
import { plantOf } from "./usablePlants";

/** A usable plant with the numbers of its treatment and its bed. */
export interface PlacedPlant extends Plant {
  readonly treatment: number;
  readonly bed: number;
}

/** A plant without an amount: the number of its treatment, and where it stands. */
interface Standing {
  readonly treatment: number;
  readonly place: Place;
}

/** The plants of several treatments as they enter a comparison. */
export interface ManyGroups {
  readonly sample: Sample;
  /** Spelt as first seen, in order of appearance. */
  readonly names: readonly string[];
  /** Null for separate plants. */
  readonly beds: readonly string[] | null;
  readonly plants: readonly PlacedPlant[];
  /** Where a treatment's lost and not recorded plants stand. */
  readonly lost: readonly Standing[];
  readonly notRecorded: readonly Standing[];
  /** Rows with an amount, but without a treatment, or without a bed where beds are given. */
  readonly leftOut: readonly Place[];
}

/** Sorts a labelled sample into treatments (the first labels) and beds (the second, if given). */
export function manyGroups(
  { sample, labels: [treatments = null, beds = null] }: Labelled,
  rule: LostPlants,
): ManyGroups {
  const [treatmentOf, bedOf] = [labelNumbers(treatments), labelNumbers(beds)];
  const placed: PlacedEntry[] = [];
  const leftOut: Place[] = [];
  for (const [row, entry] of sample.entries.entries()) {
    const [treatment, bed] = [treatmentOf(row), bedOf(row)];
    if (treatment !== null && bed !== null) placed.push({ entry, treatment, bed });
    else if (!isBlank(entry)) leftOut.push(entry.place);
  }
  const standing = (kind: Entry["kind"]) =>
    placed.flatMap(({ entry, treatment }) => (entry.kind === kind ? { treatment, place: entry.place } : []));
  return {
    sample,
    names: treatments?.names ?? [],
    beds: beds?.names ?? null,
    plants: placed.flatMap(({ entry, treatment, bed }) => {
      const plant = plantOf(entry, rule);
      return plant === null ? [] : { value: plant.value, place: plant.place, treatment, bed };
    }),
    lost: standing("lost"),
    notRecorded: standing("not-recorded"),
    leftOut,
  };
}

/** A cell of the amounts with the numbers of its treatment and its bed. */
interface PlacedEntry {
  readonly entry: Entry;
  readonly treatment: number;
  readonly bed: number;
}
