import { isHintOnly } from "../methods/verdict";
import type { Caution } from "../nouns/caution";
import type { Plant } from "../nouns/sample";
import { fewPairs, fewPlants } from "./fewPlants";
import { valuesOf } from "./harvest";
import { littleUsual } from "./littleUsual";
import { oddPlaces } from "./oddPlaces";

/** The plants of two treatments as they are compared; with pairs, index by index. */
export interface PlantsCompared {
  readonly usual: readonly Plant[];
  readonly tried: readonly Plant[];
  readonly how: "separate" | "pairs";
  /** Fieller's g of the comparison; null where there is none. */
  readonly g: number | null;
}

/** What the plants themselves give to look out for: few of them (C01), a weak base (C05), odd ones (C06). */
export function plantCautions({ usual, tried, how, g }: PlantsCompared): readonly Caution[] {
  const [before, after] = [usual.length, tried.length];
  const few = how === "pairs" ? fewPairs(after) : fewPlants(before, after);
  const isFew = isHintOnly(how === "pairs" ? { pairs: after } : { usual: before, tried: after });
  const odd = [...oddPlaces(usual), ...oddPlaces(tried)];
  return [
    ...(isFew ? [few] : []),
    ...littleUsual(valuesOf(usual), g),
    ...(odd.length > 0 ? [{ caution: "C06", places: odd } as const] : []),
  ];
}
