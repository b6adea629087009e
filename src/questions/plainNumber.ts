import type { Cell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { dayOf } from "../nouns/day";
import type { PlainNumbers } from "../nouns/findings/plainNumbers";
import { lazy } from "../nouns/lazy";
import type { Problem } from "../nouns/problem";
import type { Reading } from "../nouns/reading";
import { cellsOf, widthOf } from "../ranges/cellsOf";
import { cellText } from "../ranges/cellText";
import { excelDates } from "../ranges/excelDates";
import { missing } from "../ranges/option";
import { placeOf } from "../ranges/placeOf";
import { type PlainReading, plainCell } from "../ranges/plainCell";
import { type AskedUnit, readUnit } from "../ranges/readUnit";
import type { Given } from "./given";
import { readingsCautions } from "./readingsCautions";

/** What number stands in each cell, in one unit? */
export function plainNumber(given: Given): PlainNumbers | Problem {
  const { cells: range } = given;
  if (range === null || range === undefined) return missing("cells");
  const unit = readUnit(given.unit, "g");
  return typeof unit === "object" ? unit : inUnit(range, unit);
}

function inUnit(range: CellRange, unit: AskedUnit): PlainNumbers | Problem {
  const given = cellsOf(range);
  const read = withoutDates(
    given,
    given.map((cell) => plainCell(cell, unit)),
  );
  const [only] = read;
  if (read.length === 1 && only?.cell.is === "refused") return only.cell.problem;
  const readings = read.flatMap(({ remark }, at): Reading[] =>
    remark === null ? [] : [{ ...remark, place: placeOf(range, at), text: cellText(given[at] ?? null).trim() }],
  );
  const width = widthOf(range);
  return {
    finding: "plain-numbers",
    unit,
    cells: range.cells.map((_, row) => read.slice(row * width, (row + 1) * width).map(({ cell }) => cell)),
    numbers: read.filter(({ cell }) => cell.is === "number").length,
    readings,
    cautions: lazy(() => readingsCautions(range, readings)),
  };
}

/** A number that Excel made of a date typed among amounts ("5/7") is none (METHODS 4.1). */
function withoutDates(given: readonly Cell[], read: readonly PlainReading[]): readonly PlainReading[] {
  const isDate = excelDates(read.flatMap(({ cell }) => (cell.is === "number" ? [cell.value] : [])));
  return read.map((reading, at) => {
    const { cell, remark } = reading;
    if (cell.is !== "number" || remark !== null || !isDate(cell.value)) return reading;
    const day = dayOf(cell.value);
    const text = cellText(given[at] ?? null).trim();
    const problem: Problem = { problem: "not-plain", given: text, because: { why: "excel-date", day } };
    return { cell: { is: "refused", problem }, remark: { kind: "excel-date", day } };
  });
}
