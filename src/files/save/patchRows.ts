import type { SheetReading } from "../open/readSheet";
import type { RowMark } from "../open/scanSheet";
import { withAttribute } from "../xml/xml";

/** The texts of the cells to be written, by row and column; "" takes the cell out. */
export type CellTexts = Map<number, Map<number, string>>;

/** A sheet's part with cells written into it, rows and columns in their order. */
export function patchRows({ xml, scan, marks }: SheetReading, texts: CellTexts, prefix: string): string {
  if (texts.size === 0) return xml;
  const numbers = [...new Set([...marks.keys(), ...texts.keys()])].sort((one, other) => one - other);
  const rows = numbers.map((number) => {
    const mark = marks.get(number);
    const ofRow = texts.get(number);
    if (ofRow !== undefined) return rowText(xml, { number, mark, ofRow }, prefix);
    return mark === undefined ? "" : xml.slice(mark.start, mark.end);
  });
  const { start, end, attributes } = scan.data;
  const data = `<${prefix}sheetData${attributes}>${rows.join("")}</${prefix}sheetData>`;
  return xml.slice(0, start) + data + xml.slice(end);
}

/** One row with cells written into it. */
interface ChangedRow {
  readonly number: number;
  readonly mark: RowMark | undefined;
  readonly ofRow: ReadonlyMap<number, string>;
}

/** The columns that a row says it spans are a hint to readers, and may no longer be true. */
function rowText(xml: string, { number, mark, ofRow }: ChangedRow, prefix: string): string {
  const cells = new Map(mark?.cells.map(({ column, start, end }) => [column, xml.slice(start, end)]));
  for (const [column, text] of ofRow) cells.set(column, text);
  const inner = [...cells.entries()]
    .sort(([one], [other]) => one - other)
    .map(([, text]) => text)
    .join("");
  if (mark === undefined && inner === "") return "";
  const attributes = withAttribute(mark?.attributes ?? "", "spans", undefined);
  const numbered = /\sr\s*=/.test(attributes) ? attributes : ` r="${number + 1}"${attributes}`;
  return `<${prefix}row${numbered}>${inner}</${prefix}row>`;
}
