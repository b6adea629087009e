import { type Description, describe } from "../methods/describe";
import { middleAndEnds } from "../methods/middleAndEnds";
import { type PooledUnevenness, pooledUnevenness, unevennessLimits } from "../methods/unevenness";
import { withinBeds } from "../methods/withinBeds";
import type { Caution } from "../nouns/caution";
import type { Unevenness } from "../nouns/findings/unevenness";
import { lazy } from "../nouns/lazy";
import type { Place } from "../nouns/place";
import { isProblem, type Problem } from "../nouns/problem";
import { missing } from "../ranges/option";
import { type Labelled, readLabelled } from "../ranges/readLabelled";
import { type GardenPlant, gardenPlants } from "./gardenPlants";
import type { Given } from "./given";
import { valuesOf } from "./harvest";
import { oddPlaces } from "./oddPlaces";
import { readingCautions } from "./readingCautions";

/** How much do plants treated alike differ? */
export function unevenness(given: Given): Unevenness | Problem {
  const { amounts, treatments, beds } = given;
  if (!amounts) return missing("amounts");
  const labels = [treatments, beds].map((range) => (range ? { range, kind: "name" as const } : null));
  const read = readLabelled(amounts, labels, "keep");
  if (isProblem(read)) return read;
  const garden = gardenPlants(read);
  if (garden.plants.length === 0) return { problem: "no-usable-plants", where: read.sample.where };
  return found(read, garden.plants, garden.leftOut);
}

function found(read: Labelled, plants: readonly GardenPlant[], leftOut: readonly Place[]): Unevenness {
  const groups = byTreatment(plants).map((group) => ({
    group,
    described: describe(valuesOf(group)),
    odd: oddPlaces(group),
  }));
  const withBeds = read.labels[1] !== null;
  const pooled = withBeds ? withinBeds(plants) : pooledUnevenness(groups.map(({ described }) => described.summary));
  const odd = groups.flatMap((one) => one.odd);
  return {
    finding: "unevenness",
    treatments: groups.map(({ group, described, odd: own }) => ({
      name: group[0]?.treatmentName ?? read.sample.name,
      odd: own,
      ...figures(described, { unevenness: described.unevenness, df: described.summary.n - 1 }),
      ...middleAndEnds(valuesOf(group)),
    })),
    all: { name: null, odd, ...figures(describe(valuesOf(plants)), pooled), ...middleAndEnds(valuesOf(plants)) },
    withinBeds: withBeds,
    unit: read.sample.unit,
    leftOut,
    cautions: lazy(() =>
      cautionsOf(
        read,
        groups.map(({ described }) => described),
        odd,
      ),
    ),
  };
}

function figures({ summary, mean, deviation }: Description, pooled: PooledUnevenness) {
  const range = unevennessLimits(pooled);
  return { plants: summary.n, mean, deviation, unevenness: pooled.unevenness, range };
}

function byTreatment(plants: readonly GardenPlant[]): readonly (readonly GardenPlant[])[] {
  const groups = new Map<number, GardenPlant[]>();
  for (const plant of plants) {
    const group = groups.get(plant.treatment);
    if (group === undefined) groups.set(plant.treatment, [plant]);
    else group.push(plant);
  }
  return [...groups.values()];
}

function cautionsOf(read: Labelled, described: readonly Description[], odd: readonly Place[]): readonly Caution[] {
  const alike = described.every(({ summary }) => summary.n < 2 || summary.variance === 0);
  const several = described.some(({ summary }) => summary.n > 1);
  return [
    ...(odd.length > 0 ? [{ caution: "C06", places: odd } as const] : []),
    ...(alike && several ? [{ caution: "C17" } as const] : []),
    ...readingCautions([read.sample]),
    { caution: "C12" },
  ];
}
