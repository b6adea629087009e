import type { Call } from "../../formula/call";
import { findCalls } from "../../formula/findCalls";
import type { Selection } from "../../host/sheet";
import type { Cell } from "../../nouns/cell";
import { notesOn, type TrialNotes } from "../../nouns/trialNotes";
import { addressOf, firstCell, firstSpot, type Spot } from "../address";
import { type Asked, ask } from "../ask";
import type { Around } from "../beside/around";
import type { Context } from "../context";

/** A cell with one of our calls, as the pane explains it. */
export interface Seen {
  readonly sheet: string;
  /** "E4" */
  readonly address: string;
  readonly formula: string;
  /** What the cell shows. */
  readonly value: Cell;
  readonly numberFormat: string;
  /** All our calls in the cell, the outermost first. */
  readonly calls: readonly Call[];
  readonly call: Call;
  readonly asked: Asked;
  /** What the sheet around the cell adds. */
  readonly around: Around;
  /** The trial's notes, as far as they are about the cell's sheet. */
  readonly notes: TrialNotes;
}

/** Which cell to explain, and which of its calls. */
export type Wanted = Omit<Seen, "calls" | "call" | "asked" | "around" | "notes"> & { readonly pick: number };

/** The wish to explain a selection's first cell, by its outermost call. */
export function wantedOf({ sheet, address, formula, value, numberFormat }: Selection): Wanted {
  return { sheet, address: firstCell(address), formula, value, numberFormat, pick: 0 };
}

/** Reads a cell's call and asks it again; null when the cell holds none of ours. */
export async function see(wanted: Wanted, context: Context): Promise<Seen | null> {
  const { sheet, desk } = context;
  const { pick, ...cell } = wanted;
  const calls = findCalls(cell.formula);
  const call = calls[pick] ?? calls[0];
  if (call === undefined) return null;
  const asked = await ask(call, { sheet, desk, home: cell.sheet });
  // loaded with the first comparison, as nothing else needs it
  const { around } = await import("../beside/around");
  const notes = notesOn(await sheet.notes(), cell.sheet);
  return { ...cell, calls, call, asked, around: await around({ call, home: cell.sheet, asked }, context), notes };
}

/** Sees the same call once more, with what its cell shows by now. */
export async function seeAgain(seen: Seen, context: Context): Promise<Seen | null> {
  const { cells } = await context.sheet.read(seen.address, seen.sheet);
  return see({ ...seen, value: cells[0]?.[0] ?? null, pick: seen.calls.indexOf(seen.call) }, context);
}

/** True when both would be explained alike: same cell, same call, same cells read. */
export function isAlike(one: Seen | null, other: Seen | null): boolean {
  if (one === null || other === null) return one === other;
  return JSON.stringify(keyOf(one)) === JSON.stringify(keyOf(other));
}

function keyOf({ asked, calls, call, ...cell }: Seen): unknown {
  const { outcome } = asked;
  return [cell, call.text, calls.indexOf(call), outcome, "ranges" in asked ? asked.ranges : asked];
}

/** A sheet's cell within one of a call's arguments. */
export interface Within {
  readonly argument: string;
  /** Row and column within the argument, from 1. */
  readonly row: number;
  readonly column: number;
}

/** Where a cell stands among the ranges that an explanation read; null when it is in none of them. */
export function within({ asked }: Seen, sheet: string, { row, column }: Spot): Within | null {
  for (const { argument, cells, corner } of "ranges" in asked ? asked.ranges : []) {
    if (corner === null || corner.sheet !== sheet) continue;
    const [down, across] = [row - corner.row, column - corner.column];
    if (cells[down]?.[across] !== undefined) return { argument, row: down + 1, column: across + 1 };
  }
  return null;
}

/** Whether a formula about what is seen may stand in a cell: not in its own, and not among those that it reads. */
export function mayHold(seen: Seen, { sheet, address }: { readonly sheet: string; readonly address: string }): boolean {
  const isOwn = sheet === seen.sheet && address === seen.address;
  return !isOwn && within(seen, sheet, firstSpot(address)) === null;
}

/** The sheet's cell that a place within an argument is; null when the argument stands in no sheet. */
export function cellOf({ asked }: Seen, place: Within): { readonly sheet: string; readonly address: string } | null {
  const ranges = "ranges" in asked ? asked.ranges : [];
  const corner = ranges.find(({ argument }) => argument === place.argument)?.corner ?? null;
  if (corner === null) return null;
  const spot = { row: corner.row + place.row - 1, column: corner.column + place.column - 1 };
  return { sheet: corner.sheet, address: addressOf(spot) };
}
