import type { Caution } from "../nouns/caution";
import type { Plant } from "../nouns/sample";
import { fewPairs, fewPlants } from "./fewPlants";
import { valuesOf } from "./harvest";
import { littleUsual } from "./littleUsual";
import { oddPlaces } from "./oddPlaces";

/** With fewer plants in a treatment, or fewer pairs, a change is a hint at most (METHODS 4.3). */
const ENOUGH = { separate: 4, pairs: 6 } as const;

/** The plants of two treatments as they are compared; with pairs, index by index. */
export interface PlantsCompared {
  readonly usual: readonly Plant[];
  readonly tried: readonly Plant[];
  readonly how: keyof typeof ENOUGH;
  /** Fieller's g of the comparison; null where there is none. */
  readonly g: number | null;
}

/** What the plants themselves give to look out for: few of them (C01), a weak base (C05), odd ones (C06). */
export function plantCautions({ usual, tried, how, g }: PlantsCompared): readonly Caution[] {
  const fewest = Math.min(usual.length, tried.length);
  const few = how === "pairs" ? fewPairs(fewest) : fewPlants(usual.length, tried.length);
  const odd = [...oddPlaces(usual), ...oddPlaces(tried)];
  return [
    ...(fewest < ENOUGH[how] ? [few] : []),
    ...littleUsual(valuesOf(usual), g),
    ...(odd.length > 0 ? [{ caution: "C06", places: odd } as const] : []),
  ];
}
