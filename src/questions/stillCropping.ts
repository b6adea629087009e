import { lastWeekShares } from "../methods/lastWeekShares";
import type { Caution } from "../nouns/caution";
import type { PickLog } from "../ranges/readPicks";
import { picksOf } from "./picksOf";

/** A share of the harvest in the last week, and a gap between two such shares, from which a plant was still cropping. */
const LATE_SHARE = 0.1;
const LATE_GAP = 0.05;

/** Groups of a log's owners, such as treatments. */
export interface PickGroups {
  /** Null for all owners together. */
  readonly names: readonly (string | null)[];
  /** The group of each owner, −1 for none. */
  readonly groupOf: Int32Array;
}

/** C09: the group of which the most came in the last week, where that is much, or much more than of another. */
export function stillCropping(log: PickLog, { names, groupOf }: PickGroups): readonly Caution[] {
  const shares = lastWeekShares(picksOf(log), groupOf, names.length);
  const known = shares.filter((share) => !Number.isNaN(share));
  const most = known.reduce((high, share) => Math.max(high, share), 0);
  const least = known.reduce((low, share) => Math.min(low, share), 1);
  if (most <= LATE_SHARE && most - least <= LATE_GAP) return [];
  return [{ caution: "C09", name: names[shares.indexOf(most)] ?? null, share: most }];
}
