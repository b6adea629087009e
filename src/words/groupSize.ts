import type { TwoTreatments } from "../nouns/findings/twoTreatments";
import { counted } from "./counted";

/** How big a comparison is: "7 pairs", "7 beds", "3 plants each" or "8 plants against 7" (the usual first). */
export function groupSize({ usual, tried, pairs, asked }: TwoTreatments): string {
  if (pairs !== null) return counted(pairs.complete, asked === "beds" ? "bed" : "pair");
  const plants = counted(usual.plants.length, "plant");
  return usual.plants.length === tried.plants.length ? `${plants} each` : `${plants} against ${tried.plants.length}`;
}
