import type { NewChart } from "../../host/ownSheet";
import type { ReportResult } from "../../nouns/report";
import { addressOf } from "../address";
import { figuresOf, formatOf } from "./reportTable";

/** A chart takes the width of so many columns. */
const wide = 5;

/**
 * The chart of a result whose table stands in column A: the averages, or the change of each trial. None where a figure
 * is missing, since a gap would look like a zero.
 *
 * @param row the row of the table's headings; the chart begins two rows below the table
 */
export function reportChart(result: ReportResult, row: number): NewChart | null {
  const { about, bars, table } = result;
  const column = chartColumn(result);
  const { heading = "", format = "text" } = table.columns[column] ?? {};
  const figures = figuresOf(table.rows, column);
  if (figures.length === 0 || figures.length < table.rows.length) return null;
  const [first, last] = [row + 1, row + figures.length];
  return {
    title: bars.length > 0 ? heading : `${heading}: ${about}`,
    format: formatOf(format, figures),
    bars: table.rows.map(([name], at) => ({
      name: String(name),
      figure: figures[at] ?? 0,
      usual: bars[at]?.usual ?? false,
    })),
    names: block([first, 1], [last, 1]),
    figures: block([first, column + 1], [last, column + 1]),
    place: block([last + 2, 1], [last + 1 + chartRows(figures.length), wide]),
  };
}

/** So many rows does a chart with so many bars cover. */
export function chartRows(bars: number): number {
  return Math.min(24, 3 + 2 * bars);
}

function chartColumn({ bars, table: { columns } }: ReportResult): number {
  if (bars.length > 0) return columns.findLastIndex(({ format }) => format === "amount");
  return columns.findIndex(({ heading, format }) => heading === "Change" && format === "percent");
}

function block([top, left]: readonly [number, number], [bottom, right]: readonly [number, number]): string {
  return `${addressOf({ row: top, column: left })}:${addressOf({ row: bottom, column: right })}`;
}
