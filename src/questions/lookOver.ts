import type { CellRange } from "../nouns/cellRange";
import type { LookedOver, ReadColumn } from "../nouns/findings/lookedOver";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { NEEDS_A_LOOK, type Reading, type ReadingKind, type Remark } from "../nouns/reading";
import { widthOf } from "../ranges/cellsOf";
import { cellText } from "../ranges/cellText";
import { type LookedBlock, type LookedColumn, lookAtBlock } from "../ranges/lookAtBlock";
import type { Noted } from "../ranges/noted";
import { missing } from "../ranges/option";
import { placeOf } from "../ranges/placeOf";
import { readBlock } from "../ranges/readBlock";
import { readChoice } from "../ranges/readChoice";
import { readNumber } from "../ranges/readNumber";
import { allRead } from "./allRead";
import { doubleRows } from "./doubleRows";
import type { Given } from "./given";
import { type OddRules, oddAmounts } from "./oddAmounts";
import { readingsCautions } from "./readingsCautions";

const KINDS = ["amount", "date", "label", "per plant"] as const;

/** What in these cells needs a look before they are used? */
export function lookOver(given: Given): LookedOver | Problem {
  const { cells: range } = given;
  if (!range) return missing("cells");
  const read = allRead({
    kind: readChoice(given.kind, { argument: "kind", allowed: KINDS, fallback: null }),
    lowest: readNumber(given.lowest_ok, "lowest_ok", null),
    highest: readNumber(given.highest_ok, "highest_ok", null),
  });
  if (isProblem(read)) return read;
  const { kind, lowest, highest } = read;
  const block = readBlock(range, kind === "per plant" ? "amount" : kind);
  const perPlant = kind === null ? null : kind === "per plant";
  return over(range, lookAtBlock(block), { perPlant, lowest, highest });
}

/** A remark on a cell of the range: row below the heading, and column, from 0. */
interface Marked {
  readonly row: number;
  readonly at: number;
  readonly remark: Remark;
}

function over(range: CellRange, looked: LookedBlock, rules: OddRules): LookedOver {
  const { block, columns } = looked;
  const marked = [
    ...cellRemarks(looked),
    ...rowRemarks(looked),
    ...oddAmounts(looked, rules).map(
      ({ row, at, because }): Marked => ({ row, at, remark: { kind: "odd-size", because } }),
    ),
    ...doubles(range, looked),
  ];
  marked.sort((one, other) => one.row - other.row || one.at - other.at);
  const readings = marked.map(
    ({ row, at, remark }): Reading => ({ ...remark, ...cellAt(range, row + block.from, at) }),
  );
  const values = columns.flatMap((column) => (column.kind === "amount" ? [column.values] : []));
  return {
    finding: "looked-over",
    cells: block.rows * columns.length,
    numbers: values.reduce((sum, column) => sum + column.filter((value) => !Number.isNaN(value)).length, 0),
    needLook: new Set(marked.filter(({ remark }) => needsLook(remark.kind)).map(({ row, at }) => `${row}:${at}`)).size,
    from: block.from,
    columns: columns.map(readColumn),
    readings,
    cautions: lazy(() => readingsCautions(range, readings)),
  };
}

function readColumn(looked: LookedColumn): ReadColumn {
  const { at, heading } = looked.column;
  const about = { column: at + 1, heading, unit: null, unitInHeading: false };
  switch (looked.kind) {
    case "amount":
      return {
        ...about,
        kind: "amount",
        unit: looked.unit,
        unitInHeading: looked.unitInHeading,
        values: looked.values,
      };
    case "date":
      return { ...about, kind: "date", values: looked.yearsKnown ? looked.serials : null };
    case "label":
      return { ...about, kind: "label", values: null };
  }
}

function needsLook(kind: ReadingKind): boolean {
  return NEEDS_A_LOOK.some((look) => look === kind);
}

/** Where a plant is noted as lost, its other amounts are empty as they should be. */
function cellRemarks({ columns }: LookedBlock): readonly Marked[] {
  const lost = new Set(columns.flatMap(({ noted }) => noted.filter(isLost).map(({ row }) => row)));
  return columns.flatMap(({ column, kind, noted }) => {
    const due = kind === "amount" ? noted.filter((note) => !isEmptyNote(note) || !lost.has(note.row)) : noted;
    return due.map((note): Marked => ({ ...note, at: column.at }));
  });
}

function isLost({ remark }: Noted): boolean {
  return remark.kind === "lost";
}

function isEmptyNote({ remark }: Noted): boolean {
  return remark.kind === "not-recorded" && remark.why === "empty";
}

function rowRemarks({ aside }: LookedBlock): readonly Marked[] {
  return aside.map(({ row, at, why }) => {
    const remark: Remark = why === "empty-row" ? { kind: "not-recorded", why } : { kind: "possible-total", row: why };
    return { row, at, remark };
  });
}

/** A row entered twice is noted at its first cell. */
function doubles(range: CellRange, looked: LookedBlock): readonly Marked[] {
  const { block, columns } = looked;
  const at = columns[0]?.column.at ?? 0;
  return doubleRows(looked).map(({ row, like }) => {
    const { place } = cellAt(range, like + block.from, at);
    return { row, at, remark: { kind: "possible-double", like: place } };
  });
}

function cellAt(range: CellRange, row: number, at: number): Pick<Reading, "place" | "text"> {
  const text = cellText(range.cells[row]?.[at] ?? null).trim();
  return { place: placeOf(range, row * widthOf(range) + at), text };
}
