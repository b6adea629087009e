import { blankCell, type NewCell, type NumberFormat, numberCell, textCell } from "../../host/newSheet";
import type { ReportColumn, ReportTable } from "../../nouns/report";
import { amountFormat } from "../figures";

type Figure = string | number | null;

/** A result's figures as cells: the headings, of which no two are alike, then a row a treatment. */
export function reportTable({ columns, rows }: ReportTable): readonly (readonly NewCell[])[] {
  const formats = columns.map(({ format }, at) => formatOf(format, figuresOf(rows, at)));
  const headings = withoutTwins(columns.map(({ heading }) => heading));
  return [
    headings.map((heading) => textCell(heading, { bold: true })),
    ...rows.map((row) => row.map((figure, at) => cellOf(figure, formats[at] ?? "General"))),
  ];
}

/** The numbers of a column; texts that say why there is none are left out. */
export function figuresOf(rows: ReportTable["rows"], column: number): readonly number[] {
  return rows.map((row) => row[column]).filter((figure) => typeof figure === "number");
}

/** How the figures of a column are shown. */
export function formatOf(kind: ReportColumn["format"], figures: readonly number[]): NumberFormat {
  switch (kind) {
    case "text":
      return "General";
    case "count":
      return "0";
    case "percent":
      return figures.some((figure) => figure !== 0 && Math.abs(figure) < 0.005) ? "0.0%" : "0%";
    case "decimal":
      return "0.00";
    case "amount":
      return amountFormat(figures);
  }
}

function cellOf(figure: Figure, format: NumberFormat): NewCell {
  if (figure === null) return blankCell(format);
  return typeof figure === "number" ? numberCell(figure, format) : textCell(figure);
}

/** A spreadsheet's table gives each column a name of its own. */
function withoutTwins(headings: readonly string[]): readonly string[] {
  return headings.map((heading, at) => {
    const before = headings.slice(0, at).filter((other) => other.toLowerCase() === heading.toLowerCase()).length;
    return before === 0 ? heading : `${heading} ${before + 1}`;
  });
}
