import type { PickNote } from "../nouns/findings/pickTally";
import type { PickLog } from "../ranges/readPicks";

/** A plant that a row says is lost. */
export interface PickLoss {
  readonly note: Extract<PickNote, { note: "lost" }>;
  /** The first day on which it is called lost; NaN where none is known. */
  readonly day: number;
  /** What was picked after that day. */
  readonly pickedLater: number;
  /** True when something was picked after that day, weighed or not. */
  readonly isPickedLater: boolean;
}

/** The lost plants by the owner's number, whatever the order of rows. */
export function pickLosses(log: PickLog): ReadonlyMap<number, PickLoss> {
  const losses = new Map<number, PickLoss>();
  for (const [row, column] of log.lost) {
    const owner = log.owners.ids[row] ?? -1;
    const day = dayAt(log, row);
    const known = losses.get(owner);
    if (known === undefined) {
      const note = { note: "lost", ...log.cellAt(column, row) } as const;
      losses.set(owner, { note, day, pickedLater: 0, isPickedLater: false });
    } else if (!(known.day <= day)) losses.set(owner, { ...known, day: Number.isNaN(day) ? known.day : day });
  }
  if (losses.size > 0) addLater(log, losses);
  return losses;
}

/** Picks dated after the loss; a 0 after it says that nothing was picked. */
function addLater(log: PickLog, losses: Map<number, PickLoss>): void {
  const { owners, amounts } = log;
  for (const [row, owner] of owners.ids.entries()) {
    const loss = losses.get(owner);
    if (loss === undefined || !(dayAt(log, row) > loss.day)) continue;
    const amount = amounts.values[row] ?? Number.NaN;
    if (!(amount > 0) && !amounts.missing.has(row)) continue;
    const pickedLater = loss.pickedLater + (Number.isNaN(amount) ? 0 : amount);
    losses.set(owner, { ...loss, pickedLater, isPickedLater: true });
  }
}

function dayAt({ days }: PickLog, row: number): number {
  return days?.serials[row] ?? Number.NaN;
}
