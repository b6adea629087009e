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
  if (known.length === 0 || (most <= LATE_SHARE && most - least <= LATE_GAP)) return [];
  return [{ caution: "C09", name: names[shares.indexOf(most)] ?? null, share: most }];
}

/** What the reading of a log gives to look out for: C14, C15 and C20. */
export function logCautions({ amounts, days, owners }: PickLog): readonly Caution[] {
  const unclear = (days?.unclear ?? []).filter((row) => (owners.ids[row] ?? -1) >= 0).length;
  const read = amounts.readInto.size;
  return [
    ...(read > 0 ? [{ caution: "C14", count: read } as const] : []),
    ...(amounts.zerosUnverified > 0 ? [{ caution: "C15", zeros: amounts.zerosUnverified } as const] : []),
    ...(unclear > 0 ? [{ caution: "C20", count: unclear } as const] : []),
  ];
}
