import type { Area } from "../book";
import { addressOf, areaOf } from "../xml/address";
import { attribute, element, type Tag, unescaped } from "../xml/xml";
import type { CellMark, SheetScan } from "./scanSheet";
import { shiftedFormula } from "./shiftedFormula";

/** A cell's formula as the file stores it. */
export interface StoredFormula {
  /** In the file's form, without "=", written out where the file only points at another cell's. */
  readonly text: string;
  /** The block that it fills; absent of a formula for its own cell. */
  readonly fills?: Area;
  /** Number of the group that shares one text; absent of a formula of its own. */
  readonly shared?: string;
}

/** A formula that a group of cells shares, as its first cell has it. */
interface Master {
  readonly text: string;
  readonly mark: CellMark;
}

/** The formulas of a sheet by address. Data tables, which Excel fills by itself, count as values. */
export function storedFormulas(scan: SheetScan): ReadonlyMap<string, StoredFormula> {
  const masters = new Map<string, Master>();
  const found = new Map<string, StoredFormula>();
  for (const mark of scan.rows.flatMap(({ cells }) => cells)) {
    const tag = mark.inner.includes("<") ? element(mark.inner, "f") : undefined;
    const formula = tag === undefined ? undefined : storedFormula(tag, mark, masters);
    if (formula !== undefined) found.set(addressOf(mark), formula);
  }
  return found;
}

function storedFormula(tag: Tag, mark: CellMark, masters: Map<string, Master>): StoredFormula | undefined {
  const text = unescaped(tag.inner);
  const kind = attribute(tag.attributes, "t");
  if (kind === "dataTable") return undefined;
  if (kind === "shared") return sharedFormula(attribute(tag.attributes, "si") ?? "", { text, mark }, masters);
  const fills = kind === "array" ? areaOf(attribute(tag.attributes, "ref") ?? "") : undefined;
  if (text === "") return undefined;
  return fills === undefined ? { text } : { text, fills };
}

function sharedFormula(shared: string, own: Master, masters: Map<string, Master>): StoredFormula | undefined {
  if (own.text !== "") masters.set(shared, own);
  const master = masters.get(shared);
  if (master === undefined) return undefined;
  const { mark, text } = master;
  const steps = { down: own.mark.row - mark.row, across: own.mark.column - mark.column };
  return { text: own.text || shiftedFormula(text, steps), shared };
}
