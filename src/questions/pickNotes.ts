import { farAbove } from "../methods/farAbove";
import { type RepeatedRow, repeatedRows } from "../methods/repeatedRows";
import type { PickNote } from "../nouns/findings/pickTally";
import type { PickLog } from "../ranges/readPicks";
import { picksOf } from "./picksOf";

/** Notes by the owner's number, each owner's in order of rows within a kind. */
export type NotesByOwner = ReadonlyMap<number, readonly PickNote[]>;

/** What single rows of a log give to look at, beside a loss: METHODS 3 and 4.1. */
export function pickNotes(log: PickLog): NotesByOwner {
  const notes = new Map<number, PickNote[]>();
  const { amounts, days } = log;
  const note = (row: number, one: PickNote): void => {
    const owner = log.owners.ids[row] ?? -1;
    const noted = notes.get(owner);
    if (noted === undefined) notes.set(owner, [one]);
    else noted.push(one);
  };
  for (const [row, why] of amounts.missing) note(row, { note: "weight-missing", why, ...log.cellAt("amounts", row) });
  for (const same of repeatedRows(picksOf(log))) note(same.row, repeated(log, same));
  for (const row of farAbove(amounts.values)) note(row, { note: "far-above", ...amountAt(log, row) });
  for (const row of days?.unclear ?? []) {
    if ((log.owners.ids[row] ?? -1) >= 0) note(row, { note: "date-unclear", ...log.cellAt("dates", row) });
  }
  for (const row of amounts.readInto) note(row, { note: "read-as", ...amountAt(log, row) });
  return notes;
}

function repeated(log: PickLog, { row, like }: RepeatedRow): PickNote {
  return { note: "entered-twice", place: log.cellAt("owners", row).place, like: log.cellAt("owners", like).place };
}

function amountAt(log: PickLog, row: number): ReturnType<PickLog["cellAt"]> & { readonly amount: number } {
  return { ...log.cellAt("amounts", row), amount: log.amounts.values[row] ?? Number.NaN };
}
