import { fileFormula, holdsOurs } from "../formulas/fileFormula";
import type { CellMark } from "../open/scanSheet";
import type { StoredFormula } from "../open/storedFormulas";
import { referenceOf } from "../xml/address";
import { attribute, element, escaped } from "../xml/xml";
import { cellText } from "./cellText";
import { type EffectiveCell, sameFormula } from "./effectiveCells";

/** What the cells of a saved workbook are written with. */
export interface Writing {
  /** Ids of our functions, in capitals. */
  readonly own: ReadonlySet<string>;
  /** The number of the style for a cell's look, given the style that it had. */
  styleOf(look: number | undefined, like: number): number;
  /** The number with which a cell marks a formula that fills a block; undefined where the file cannot have it. */
  dynamicMark(): number | undefined;
  /** Takes note of a formula that can be saved by its value only: "Plan!B7". */
  onlyValue(address: string): void;
  /** Days to take off a number that shows as a date in a style, in a workbook that counts from 1904. */
  daysOff(style: number): number;
}

/** One cell's way from the file to the present. */
export interface Change {
  readonly sheet: string;
  readonly address: string;
  readonly before: EffectiveCell | undefined;
  readonly now: EffectiveCell | undefined;
  /** Its formula and its text in the file. */
  readonly stored: StoredFormula | undefined;
  readonly mark: CellMark | undefined;
}

/** A formula to be written, and its cell's number of metadata. */
interface WrittenFormula {
  readonly formula: string;
  readonly mark?: number;
}

/** The text of a changed cell. A formula that has not changed keeps its text and gets its new value. */
export function writtenCell(change: Change, writing: Writing, prefix: string): string {
  const { address, now } = change;
  const style = writing.styleOf(now?.look, change.mark?.style ?? 0);
  const value = now?.value ?? null;
  const dated = typeof value === "number" ? value - writing.daysOff(style) : value;
  return cellText({ address, style, value: dated, ...writtenFormula(change, writing, prefix) }, prefix);
}

function writtenFormula(change: Change, writing: Writing, prefix: string): WrittenFormula {
  const { before, now, stored, mark, sheet, address } = change;
  if (now?.formula === undefined) return { formula: "" };
  const text = fileFormula(now.formula, writing.own);
  const kept = sameFormula(before, now) && stored?.shared === undefined;
  if (kept && (!holdsOurs(now.formula) || stored?.text === text)) return keptFormula(mark);
  if (text === undefined) {
    writing.onlyValue(`${sheet}!${address}`);
    return { formula: "" };
  }
  const fills = holdsOurs(now.formula) ? (now.fills ?? address) : now.fills;
  const dynamic = fills === undefined ? undefined : writing.dynamicMark();
  if (dynamic === undefined) return { formula: `<${prefix}f>${escaped(text)}</${prefix}f>` };
  const reference = typeof fills === "object" ? referenceOf(fills) : address;
  return { formula: `<${prefix}f t="array" ref="${reference}">${escaped(text)}</${prefix}f>`, mark: dynamic };
}

function keptFormula(mark: CellMark | undefined): WrittenFormula {
  const { inner = "", attributes = "" } = mark ?? {};
  const tag = element(inner, "f");
  const formula = tag === undefined ? "" : inner.slice(tag.start, tag.end);
  const number = attribute(attributes, "cm");
  return number === undefined ? { formula } : { formula, mark: Number(number) };
}
