import type { Picks } from "../methods/picks";
import type { PickLog } from "../ranges/readPicks";

/** A log as read, as plain numbers. */
export function picksOf({ owners, amounts, days }: PickLog): Picks {
  return { owners: owners.ids, amounts: amounts.values, days: days?.serials ?? null };
}
