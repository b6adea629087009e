import type { NewCell, PlacedCells } from "../../../src/host/newSheet";
import type { NewChart, OwnSheet } from "../../../src/host/ownSheet";
import { chartShapes, type Shape } from "../../../src/host/practice/chart/chartShapes";
import { firstSpot } from "../../../src/pane/address";

const rowHeight = 24;
const usualWidth = 88;
/** Letters of the picture are taken to be so wide, so that it is the same on every computer. */
const letter = 6.8;

/** A sheet of ours as the practice sheet shows it, as a picture that any browser opens and a reviewer can compare. */
export function sheetPicture(sheet: OwnSheet): string {
  const marks = [
    ...sheet.tables.map((address) => heading(address, sheet)),
    ...sheet.blocks.flatMap((block) => texts(block, sheet)),
    ...sheet.charts.flatMap((chart) => chartMarks(chart, sheet)),
  ];
  const rows = Math.max(...sheet.blocks.map(({ address, rows: own }) => firstSpot(address).row + own.length));
  const width = leftOf(Math.max(9, sheet.widths.length) + 1, sheet);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${rows * rowHeight}" font-family="sans-serif" font-size="13">`,
    `<title>${safe(sheet.name)}</title>`,
    '<rect width="100%" height="100%" fill="#ffffff"/>',
    ...marks,
    "</svg>\n",
  ].join("\n");
}

/** The left edge of a column, counted from 1. */
function leftOf(column: number, { widths }: OwnSheet): number {
  return Array.from({ length: column - 1 }, (_, at) => widths[at] ?? usualWidth).reduce((sum, one) => sum + one, 0);
}

function heading(address: string, sheet: OwnSheet): string {
  const [first = "", last = first] = address.split(":");
  const [from, to] = [firstSpot(first), firstSpot(last)];
  const left = leftOf(from.column, sheet);
  const width = leftOf(to.column + 1, sheet) - left;
  return `<rect x="${left}" y="${(from.row - 1) * rowHeight}" width="${width}" height="${rowHeight}" fill="#e3ebd8"/>`;
}

function texts({ address, rows }: PlacedCells, sheet: OwnSheet): readonly string[] {
  const { row, column } = firstSpot(address);
  return rows.flatMap((cells, down) =>
    cells.flatMap((cell, across) =>
      cell === null || cell.kind === "blank" ? [] : [textMark(cell, [row + down, column + across], sheet)],
    ),
  );
}

/** Numbers stand at the right edge of their cells. */
function textMark(cell: NewCell, [row, column]: readonly [number, number], sheet: OwnSheet): string {
  const isNumber = typeof cell.content === "number";
  const x = isNumber ? leftOf(column + 1, sheet) - 3 : leftOf(column, sheet) + 3;
  const look = `${isNumber ? ' text-anchor="end"' : ""}${cell.bold ? ' font-weight="600"' : ""}`;
  return `<text x="${x}" y="${(row - 1) * rowHeight + 16}"${look}>${safe(shown(cell))}</text>`;
}

function shown({ content, format }: NewCell): string {
  if (typeof content === "string") return content;
  const digits = /\.(0+)/.exec(format)?.[1]?.length ?? 0;
  return format.endsWith("%") ? `${(content * 100).toFixed(digits)}%` : content.toFixed(digits);
}

function chartMarks({ title, bars, format, place }: NewChart, sheet: OwnSheet): readonly string[] {
  const [first = "", last = first] = place.split(":");
  const [from, to] = [firstSpot(first), firstSpot(last)];
  const [left, top] = [leftOf(from.column, sheet), (from.row - 1) * rowHeight];
  const box = { left, top, width: leftOf(to.column + 1, sheet) - left, height: to.row * rowHeight - top };
  const frame = `<rect x="${left}" y="${top}" width="${box.width}" height="${box.height}" fill="none" stroke="#d3dacd"/>`;
  const widthOf = (text: string) => letter * [...text].length;
  return [frame, ...chartShapes({ title, bars, pattern: format }, box, widthOf).map(shapeMark)];
}

/** A shape of a chart as a mark of the picture. */
function shapeMark(shape: Shape): string {
  if (shape.shape === "text") {
    const look = shape.bold ? ' font-weight="600"' : "";
    return `<text x="${round(shape.left)}" y="${round(shape.middle + 4.5)}"${look}>${safe(shape.text)}</text>`;
  }
  const colour = shape.shape === "line" ? "#1f241d" : shape.usual ? "#7a5c12" : "#2d6a2e";
  const { left, top, width, height } = shape.box;
  return `<rect x="${round(left)}" y="${round(top)}" width="${round(width)}" height="${round(height)}" fill="${colour}"/>`;
}

function round(place: number): number {
  return Math.round(place * 10) / 10;
}

function safe(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}
