import type { Caution } from "../nouns/caution";
import type { Known } from "../nouns/known";
import type { Sample } from "../nouns/sample";
import { changeBetween, lossCautions } from "./lossCautions";
import { usablePlants } from "./usablePlants";

/** What to look out for where lost plants were left out of two averages, and what counting them as zero would give. */
export function lossesLeftOut(usual: Sample, tried: Sample, change: Known): readonly Caution[] {
  const [before, after] = [usablePlants(usual, "count as zero"), usablePlants(tried, "count as zero")];
  return lossCautions({ usual, tried, change, changeLostAsZero: changeBetween(before, after), countedAsZero: false });
}
