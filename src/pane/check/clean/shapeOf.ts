import type { Desk } from "../../../answers/desk";
import { type Cell, isEmpty } from "../../../nouns/cell";
import type { Layout, Shape } from "./shape";
import { columnsRead, wideParts } from "./wide/wideParts";

/** So many days across make a table of picks across. */
const fewestDays = 3;

/**
 * What a table looks like: its headings stand in the first row with two filled cells or more, and it is wide when
 * days, or names that name no unit, stand across. The grower may say otherwise.
 */
export function shapeOf(cells: readonly (readonly Cell[])[], desk: Desk): Shape {
  const first = cells.findIndex((row) => row.filter((cell) => !isEmpty(cell)).length > 1);
  const at = Math.max(0, first);
  return { layout: layoutOf(cells, at, desk), headingRow: at + 1, blankIsNone: false };
}

function layoutOf(cells: readonly (readonly Cell[])[], headingRow: number, desk: Desk): Layout {
  const { groups, labels, measureRow } = wideParts(cells, headingRow, desk);
  const headings = groups.map(({ heading }) => cells[headingRow]?.[heading] ?? null);
  const [across] = columnsRead(
    headings.map((heading) => [heading]),
    desk,
  );
  if (headings.length >= fewestDays && across?.kind === "date") return "picks-across";
  if (measureRow !== null && headings.length > 1) return "treatments-across";
  const columns = columnsRead(cells.slice(headingRow), desk);
  const amounts = columns.filter(({ kind }) => kind === "amount");
  const isLong = columns.some(({ kind }) => kind === "date") || labels.length > 1;
  const isNames = amounts.every(
    ({ unitInHeading, heading }) => heading !== null && !unitInHeading && !COUNTS.test(heading),
  );
  return !isLong && isNames && amounts.length > 1 ? "treatments-across" : "rows";
}

/** Headings of what is measured, which are no treatments. */
const COUNTS = /\b(?:fruits?|count|number|no\.?|pods?|total|weight|yield|picks?|average|mean|sum)\b/i;
