import { oddValues } from "../methods/oddValues";
import type { Place } from "../nouns/place";
import type { Plant } from "../nouns/sample";

/** Where the plants stand that are far from the rest of their treatment. */
export function oddPlaces(plants: readonly Plant[]): readonly Place[] {
  return oddValues(plants.map(({ value }) => value)).flatMap((at) => plants[at]?.place ?? []);
}
