import { last } from "../xml/address";
import { attribute, element, elements } from "../xml/xml";
import { isTrue } from "./workbookPart";

/** Pixels of a digit in the usual letters, by which files count widths (ECMA-376 part 1, 18.3.1.13). */
const digit = 7;

/** A width counted in digits, as files have it, in pixels. */
function pixels(width: number): number {
  return Math.trunc(((256 * width + Math.trunc(128 / digit)) / 256) * digit);
}

/** A width in pixels as files count it. */
export function digits(wide: number): number {
  return wide / digit;
}

/** The widths of the columns that have one of their own, in pixels; a hidden column is 0 wide. */
export function columnWidths(xml: string): ReadonlyMap<number, number> {
  const widths = new Map<number, number>();
  for (const { attributes } of elements(element(xml, "cols")?.inner ?? "", "col")) {
    const from = Number(attribute(attributes, "min")) - 1;
    const to = Math.min(Number(attribute(attributes, "max")) - 1, from + 255, last.column);
    const hidden = isTrue(attribute(attributes, "hidden"));
    const width = hidden ? 0 : pixels(Number(attribute(attributes, "width") ?? Number.NaN));
    for (let column = from; column <= to; column++) if (!Number.isNaN(width)) widths.set(column, width);
  }
  return widths;
}
