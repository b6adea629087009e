import { mean } from "../numerics/moments";
import { connectedTreatments } from "./connectedTreatments";
import { type SweptPlant, sweptBeds } from "./sweptBeds";
import type { PlantInModel } from "./treatmentModel";
import { type PooledUnevenness, shareOfMean } from "./unevenness";

/**
 * The unevenness that is left within beds: √MSE of the additive model treatment + bed, as a fraction of the average of
 * all plants. Plants may be missing, and all may have one treatment.
 *
 * @param plants treatments and beds may have any numbers
 * @returns an Absence when beds and treatments use up all degrees of freedom, or the average is not above 0
 *
 * Source: the randomised-block analysis by ordinary least squares, R's lm(value ~ bed + treatment).
 */
export function withinBeds(plants: readonly PlantInModel[]): PooledUnevenness {
  if (plants.length === 0) return { unevenness: { absent: "no-usable-plants" }, df: 0 };
  const average = mean(plants.map(({ value }) => value));
  // around the average, so that equal plants leave nothing but zeros
  const around = plants.map((plant) => ({ ...plant, value: plant.value - average }));
  let [squares, df] = [0, plants.length];
  for (const { treatments, beds } of linkedParts(around)) {
    squares += sweptBeds(beds, treatments)?.residualSumOfSquares ?? Number.NaN;
    df -= treatments + beds.length - 1;
  }
  if (df < 1) return { unevenness: { absent: "no-degrees-of-freedom" }, df: 0 };
  return { unevenness: shareOfMean(Math.sqrt(squares / df), average), df };
}

/** A part of a trial that beds link: how many treatments it has, numbered anew, and its plants bed by bed. */
interface Part {
  readonly treatments: number;
  readonly beds: readonly (readonly SweptPlant[])[];
}

/** Where a treatment stands: its new number, and the beds of its part. */
interface Place {
  readonly number: number;
  readonly beds: Map<number, SweptPlant[]>;
}

/** Treatments that no bed links have nothing in common, so that each part is fitted by itself. */
function linkedParts(plants: readonly PlantInModel[]): readonly Part[] {
  const parts = connectedTreatments(plants).map((group) => ({ group, beds: new Map<number, SweptPlant[]>() }));
  const places = new Map(
    parts.flatMap(({ group, beds }) => group.map((name, number) => [name, { number, beds }] as const)),
  );
  for (const { value, treatment, bed } of plants) {
    const { number, beds } = places.get(treatment) as Place;
    const plant = { value, treatment: number };
    const own = beds.get(bed);
    if (own === undefined) beds.set(bed, [plant]);
    else own.push(plant);
  }
  return parts.map(({ group, beds }) => ({ treatments: group.length, beds: [...beds.values()] }));
}
