import { ALPHA } from "../methods/alpha";
import { allDuos, contrast } from "../methods/contrast";
import { manySwap } from "../methods/manySwap";
import { isHintOnly } from "../methods/verdict";
import { CLOSE } from "./close";
import { basisOf, type JointComparison } from "./jointComparison";
import type { ManyAsked } from "./manyAsked";
import type { ManyGroups } from "./manyGroups";

/**
 * Whether one of several comparisons is a close one and the label swap says otherwise (C22): its p is near the bar of
 * 5 %, and the two stand on opposite sides. Not for those that lean at most, nor with own unevenness, where labels may
 * not be swapped.
 */
export function checksDisagree(groups: ManyGroups, joint: JointComparison, { how }: ManyAsked): boolean {
  const { treatments, model } = joint;
  const test = joint.test();
  if (test === null) return false;
  // all that are judged together, shown or not
  const duos = how === "all pairs" ? allDuos(treatments.length) : joint.duos;
  const close = duos
    .filter((duo) => !isHintOnly(basisOf(groups, treatments, duo)))
    .map((duo) => contrast(model, duo).t)
    .filter((t) => test.isBelow(t, ALPHA * CLOSE) && !test.isBelow(t, ALPHA / CLOSE));
  if (close.length === 0) return false;
  const plants = groups.plants.map((plant) => ({ ...plant, treatment: treatments.indexOf(plant.treatment) }));
  const swapped = manySwap(plants, model, duos);
  return close.some((t) => swapped(t) < ALPHA !== test.isBelow(t, ALPHA));
}
