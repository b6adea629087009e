import type { LostPlants } from "../nouns/lostPlants";
import type { Place } from "../nouns/place";
import type { Entry, Plant, Sample } from "../nouns/sample";
import type { Labelled } from "../ranges/readLabelled";
import type { Labels } from "../ranges/readLabels";
import { plantOf } from "./usablePlants";

/** A usable plant with the numbers of its treatment and its bed. */
export interface PlacedPlant extends Plant {
  readonly treatment: number;
  readonly bed: number;
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
  readonly lost: readonly { readonly treatment: number; readonly place: Place }[];
  readonly notRecorded: readonly { readonly treatment: number; readonly place: Place }[];
  /** Rows with an amount, but without a treatment, or without a bed where beds are given. */
  readonly leftOut: readonly Place[];
}

/** Sorts a labelled sample into treatments (the first labels) and beds (the second, if given). */
export function manyGroups(
  { sample, labels: [treatments = null, beds = null] }: Labelled,
  rule: LostPlants,
): ManyGroups {
  const rows = sample.entries.map((entry, row) => ({
    entry,
    treatment: numberOf(treatments, row),
    bed: beds === null ? 0 : numberOf(beds, row),
  }));
  const placed = rows.flatMap(({ entry, treatment, bed }) =>
    treatment === null || bed === null ? [] : [{ entry, treatment, bed }],
  );
  const standing = (kind: Entry["kind"]) =>
    placed
      .filter(({ entry }) => entry.kind === kind)
      .map(({ entry, treatment }) => ({ treatment, place: entry.place }));
  return {
    sample,
    names: treatments?.names ?? [],
    beds: beds?.names ?? null,
    plants: placed.flatMap(({ entry, treatment, bed }) => {
      const plant = plantOf(entry, rule);
      return plant === null ? [] : [{ ...plant, treatment, bed }];
    }),
    lost: standing("lost"),
    notRecorded: standing("not-recorded"),
    leftOut: rows
      .filter(({ entry, treatment, bed }) => (treatment === null || bed === null) && !isBlank(entry))
      .map(({ entry }) => entry.place),
  };
}

function isBlank(entry: Entry): boolean {
  return entry.kind === "not-recorded" && entry.why === "empty";
}

function numberOf(labels: Labels | null, row: number): number | null {
  const label = labels?.entries[row]?.label ?? null;
  return label === null ? null : (labels?.names.indexOf(label) ?? null);
}
