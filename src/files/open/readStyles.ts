import { SSF } from "@e965/xlsx";
import type { Look } from "../book";
import { attribute, element, elements, type Tag } from "../xml/xml";
import { colourOf } from "./colours";
import { isTrue } from "./workbookPart";

/** The lists of a workbook's styles that a cell's look is put together from. */
interface StyleLists {
  readonly fonts: readonly Tag[];
  readonly fills: readonly Tag[];
  readonly patterns: ReadonlyMap<string, string>;
  readonly theme: readonly string[];
}

/** Excel shows these as the reader's computer writes dates; here they are shown so that nobody can misread them. */
const localDates: ReadonlyMap<string, string> = new Map([
  ["14", "yyyy-mm-dd"],
  ["22", "yyyy-mm-dd hh:mm"],
]);

/**
 * The looks that the cells of a workbook name by number.
 *
 * @param xml the text of its styles part
 * @param theme its colours, as `themeColours` gives them
 */
export function readStyles(xml: string, theme: readonly string[]): readonly Look[] {
  const lists: StyleLists = {
    fonts: elements(element(xml, "fonts")?.inner ?? "", "font"),
    fills: elements(element(xml, "fills")?.inner ?? "", "fill"),
    patterns: patternsIn(xml),
    theme,
  };
  return elements(element(xml, "cellXfs")?.inner ?? "", "xf").map((format) => lookOf(format, lists));
}

function patternsIn(xml: string): ReadonlyMap<string, string> {
  const own = elements(element(xml, "numFmts")?.inner ?? "", "numFmt").map(({ attributes }): [string, string] => [
    attribute(attributes, "numFmtId") ?? "",
    attribute(attributes, "formatCode") ?? "",
  ]);
  const builtIn = Object.entries<string>(SSF.get_table()).filter(([id]) => Number(id) < 50);
  return new Map([...builtIn, ...localDates, ...own]);
}

function lookOf({ attributes, inner }: Tag, { fonts, fills, patterns, theme }: StyleLists): Look {
  const pattern = patterns.get(attribute(attributes, "numFmtId") ?? "0") ?? "General";
  const font = fonts[Number(attribute(attributes, "fontId") ?? 0)]?.inner ?? "";
  const fill = fills[Number(attribute(attributes, "fillId") ?? 0)]?.inner ?? "";
  return {
    ...(pattern.toLowerCase() === "general" ? {} : { pattern }),
    ...(isOn(font, "b") ? { bold: true } : {}),
    ...(isOn(font, "i") ? { italic: true } : {}),
    ...colours(font, fill, theme),
    ...placing(element(inner, "alignment")?.attributes ?? ""),
  };
}

function isOn(font: string, name: string): boolean {
  const tag = element(font, name);
  return (
    tag !== undefined && (attribute(tag.attributes, "val") === undefined || isTrue(attribute(tag.attributes, "val")))
  );
}

/** Black letters are the usual ones, so that a dark page may show them light. */
function colours(font: string, fill: string, theme: readonly string[]): Look {
  const ink = colourOf(element(font, "color")?.attributes ?? "", theme);
  const kind = element(fill, "patternFill");
  const solid = attribute(kind?.attributes ?? "", "patternType") === "solid";
  const behind = solid ? colourOf(element(kind?.inner ?? "", "fgColor")?.attributes ?? "", theme) : undefined;
  return {
    ...(ink === undefined || ink === "#000000" ? {} : { ink }),
    ...(behind === undefined ? {} : { fill: behind }),
  };
}

const across: ReadonlyMap<string, Look> = new Map([
  ["left", { across: "left" }],
  ["center", { across: "center" }],
  ["right", { across: "right" }],
]);
const down: ReadonlyMap<string, Look> = new Map([
  ["top", { down: "top" }],
  ["center", { down: "middle" }],
]);

function placing(alignment: string): Look {
  return {
    ...(isTrue(attribute(alignment, "wrapText")) ? { wrap: true } : {}),
    ...across.get(attribute(alignment, "horizontal") ?? ""),
    ...down.get(attribute(alignment, "vertical") ?? ""),
  };
}
