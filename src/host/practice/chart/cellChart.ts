import type { ICellData, Nullable } from "@univerjs/core";
import type { BookChart } from "../../../files/book";

/** Under what a cell of the grid keeps its chart: it moves with the cell, and goes with it. */
const key = "fairbedChart";

/** The part of a cell that holds a chart. */
export function withChart(chart: BookChart): Pick<ICellData, "custom"> {
  return { custom: { [key]: chart } };
}

/** The chart that a cell holds; undefined where it holds none. */
export function chartOf(cell: Nullable<ICellData>): BookChart | undefined {
  return cell?.custom?.[key] as BookChart | undefined;
}
