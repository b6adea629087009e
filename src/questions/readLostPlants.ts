import type { LostPlants } from "../nouns/lostPlants";
import type { Problem } from "../nouns/problem";
import { readChoice } from "../ranges/readChoice";
import type { Given } from "./given";

/** How lost plants are to be counted; left out of the averages when nothing is typed. */
export function readLostPlants(given: Given): LostPlants | Problem {
  const allowed: readonly LostPlants[] = ["leave out", "count as zero"];
  return readChoice(given.lost_plants, { argument: "lost_plants", allowed, fallback: "leave out" as const });
}
