import type { BookSheet } from "../book";
import type { SheetReading } from "../open/readSheet";
import { addressOf, type Place } from "../xml/address";
import { prefixOf } from "../xml/xml";
import { type Cells, changedPlaces, type Places } from "./changedPlaces";
import { effectiveCells } from "./effectiveCells";
import { layOut } from "./layOut";
import { type CellTexts, patchRows } from "./patchRows";
import { type Change, type Writing, writtenCell } from "./writtenCell";

/** A sheet's part as it is to be saved. */
export interface PatchedSheet {
  readonly xml: string;
  /** Whether any cell gained or lost a formula. */
  readonly formulasChanged: boolean;
  /** Whether any cell was written. */
  readonly changed: boolean;
}

/**
 * A sheet's part with the present cells in it. Every cell that has not changed keeps its text, as does everything
 * around the cells.
 */
export function patchSheet(reading: SheetReading, present: BookSheet, writing: Writing): PatchedSheet {
  const [before, now] = [effectiveCells(reading.sheet), effectiveCells(present)];
  const places = changedPlaces(before, now, { formulas: reading.formulas, own: writing.own });
  separateGroups(reading, places, now);
  const prefix = prefixOf(reading.xml, "worksheet");
  const texts: CellTexts = new Map();
  let formulasChanged = false;
  for (const { place, change } of changesAt(reading, places, { before, now })) {
    formulasChanged ||= (change.stored === undefined) !== (change.now?.formula === undefined);
    const ofRow = texts.get(place.row) ?? new Map<number, string>();
    texts.set(place.row, ofRow.set(place.column, writtenCell(change, writing, prefix)));
  }
  const xml = layOut(patchRows(reading, texts, prefix), reading.sheet, { ...present, rows: now });
  return { xml, formulasChanged, changed: texts.size > 0 };
}

function* changesAt(
  reading: SheetReading,
  places: Places,
  { before, now }: { before: Cells; now: Cells },
): Generator<{ place: Place; change: Change }> {
  for (const [row, columns] of places) {
    const marks = new Map(reading.marks.get(row)?.cells.map((mark) => [mark.column, mark]));
    for (const column of columns) {
      const address = addressOf({ row, column });
      const [was, is] = [before.get(row)?.get(column), now.get(row)?.get(column)];
      const stored = reading.formulas.get(address);
      const sheet = reading.entry.name;
      yield {
        place: { row, column },
        change: { sheet, address, before: was, now: is, stored, mark: marks.get(column) },
      };
    }
  }
}

/** When the first cell of a group that shares a formula changes, the others need texts of their own. */
function separateGroups({ formulas, marks }: SheetReading, places: Places, now: Cells): void {
  const touched = new Set<string>();
  for (const [row, columns] of places) {
    for (const column of columns) {
      const shared = formulas.get(addressOf({ row, column }))?.shared;
      if (shared !== undefined) touched.add(shared);
    }
  }
  if (touched.size === 0) return;
  for (const mark of [...marks.values()].flatMap(({ cells }) => cells)) {
    const shared = formulas.get(addressOf(mark))?.shared;
    if (shared === undefined || !touched.has(shared) || now.get(mark.row)?.get(mark.column) === undefined) continue;
    places.set(mark.row, (places.get(mark.row) ?? new Set()).add(mark.column));
  }
}
