import type { Cell } from "../../src/nouns/cell";
import { readPicks } from "../../src/ranges/readPicks";
import { found, range } from "./range";

/** One pick: whose, when, how much. */
export type Pick = readonly [owner: string, day: string | null, amount: Cell];

/** A log of picks as read, its owners plants or (with "name") treatments. */
export function smallPicks(picks: readonly Pick[], ownerKind: "plant" | "name") {
  const column = (argument: string, at: 0 | 1 | 2) =>
    range(
      argument,
      picks.map((pick) => pick[at]),
    );
  return found(
    readPicks({
      owners: column(ownerKind === "plant" ? "plants" : "treatments", 0),
      ownerKind,
      amounts: column("amounts", 2),
      dates: column("dates", 1),
      lossNotes: null,
      besides: [],
      unit: null,
      start: null,
    }),
  );
}
