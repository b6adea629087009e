import { ALPHA } from "../methods/alpha";
import { letters } from "../methods/letters";
import type { PairFound } from "../nouns/findings/manyTreatments";
import { isKnown, type Known } from "../nouns/known";
import type { JointComparison } from "./jointComparison";
import type { ManyGroups } from "./manyGroups";

/** All pairs, the biggest difference first; in each, the treatment with the higher average comes first. */
export function pairsFound({ names }: ManyGroups, joint: JointComparison): readonly PairFound[] {
  const order = byHeight(joint);
  const pairs = order.flatMap((tried, place) =>
    order.slice(place + 1).map((usual): PairFound => {
      const { difference, differenceRange, pValue, verdict } = joint.pair({ usual, tried });
      const name = (at: number) => names[joint.treatments[at] ?? -1] ?? "";
      return { higher: name(tried), lower: name(usual), difference, differenceRange, pValue, verdict };
    }),
  );
  return pairs.toSorted((one, other) => size(other.difference) - size(one.difference));
}

/** The letters of the treatments, by their numbers. */
export function lettersFor(joint: JointComparison): ReadonlyMap<number, string> {
  const order = byHeight(joint);
  const differing = order.flatMap((tried, one) =>
    order.slice(one + 1).flatMap((usual, further) => {
      const { pValue } = joint.pair({ usual, tried });
      return isKnown(pValue) && pValue < ALPHA ? [[one, one + 1 + further] as const] : [];
    }),
  );
  const given = letters(order.length, differing);
  return new Map(order.map((place, at) => [joint.treatments[place] ?? -1, given[at] ?? ""]));
}

/** The treatments' places, the highest average first. */
function byHeight({ model }: JointComparison): readonly number[] {
  return [...model.means.keys()].sort((one, other) => (model.means[other] ?? 0) - (model.means[one] ?? 0));
}

function size(difference: Known): number {
  return isKnown(difference) ? difference : 0;
}
