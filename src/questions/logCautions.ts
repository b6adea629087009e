import type { Caution } from "../nouns/caution";
import type { PickLog } from "../ranges/readPicks";

/** What the reading of a log gives to look out for: C14, C15 and C20. */
export function logCautions(log: PickLog): readonly Caution[] {
  const { amounts } = log;
  const unclear = unclearDates(log);
  const read = amounts.readInto.size;
  return [
    ...(read > 0 ? [{ caution: "C14", count: read } as const] : []),
    ...(amounts.zerosUnverified > 0 ? [{ caution: "C15", zeros: amounts.zerosUnverified } as const] : []),
    ...(unclear > 0 ? [{ caution: "C20", count: unclear } as const] : []),
  ];
}

/** How many picks of an owner have a date that could not be read for certain. */
export function unclearDates({ days, owners }: PickLog): number {
  return (days?.unclear ?? []).filter((row) => (owners.ids[row] ?? -1) >= 0).length;
}
