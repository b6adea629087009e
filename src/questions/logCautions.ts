import type { Caution } from "../nouns/caution";
import type { PickLog } from "../ranges/readPicks";

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
