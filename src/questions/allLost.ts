import type { PerPlant } from "../nouns/findings/perPlant";
import { isKnown } from "../nouns/known";
import type { Problem } from "../nouns/problem";
import { whereIs } from "../ranges/whereIs";
import type { Given } from "./given";

/** Why an average per plant that is due cannot be given: every plant was lost. Null when there is an average. */
export function allLost({ perPlant }: PerPlant, { amounts }: Given): Problem | null {
  if (isKnown(perPlant) || !amounts) return null;
  return { problem: "all-lost", where: whereIs(amounts) };
}
