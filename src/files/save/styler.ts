import { SSF } from "@e965/xlsx";
import type { Look } from "../book";
import { attribute, element, elements, escaped, prefixOf, withAttribute } from "../xml/xml";
import { inside, replaced } from "./draft";

/** Gives looks their numbers in a workbook's styles, adding what is not there yet. */
export interface Styler {
  /**
   * The number of the style for a look.
   *
   * @param like number of the style that the cell had: what the look says nothing of (edges, letters) stays as there
   */
  styleOf(look: Look, like: number): number;
  /** The styles' text, with everything added. */
  text(): string;
}

/** The styles of one workbook while it is saved. */
interface Styles {
  xml: string;
  readonly prefix: string;
  readonly looks: readonly Look[];
}

/**
 * @param xml the text of the workbook's styles
 * @param looks as read from them
 */
export function styler(xml: string, looks: readonly Look[]): Styler {
  const styles: Styles = { xml, prefix: prefixOf(xml, "styleSheet"), looks };
  const known = new Map<string, number>();
  return {
    styleOf: (look, like) => {
      const key = JSON.stringify([like, look]);
      const number = known.get(key) ?? added(styles, look, like);
      known.set(key, number);
      return number;
    },
    text: () => styles.xml,
  };
}

function added(styles: Styles, look: Look, like: number): number {
  const before = styles.looks[like] ?? {};
  const formats = elements(element(styles.xml, "cellXfs")?.inner ?? "", "xf");
  const format = formats[like] ?? formats[0];
  let attributes = format?.attributes ?? "";
  if (look.pattern !== before.pattern) {
    attributes = applied(attributes, ["numFmtId", patternNumber(styles, look.pattern)], "applyNumberFormat");
  }
  if (look.bold !== before.bold || look.italic !== before.italic || look.ink !== before.ink) {
    attributes = applied(attributes, ["fontId", fontNumber(styles, look, attributes)], "applyFont");
  }
  if (look.fill !== before.fill) {
    attributes = applied(attributes, ["fillId", fillNumber(styles, look.fill)], "applyFill");
  }
  const placed = look.wrap !== before.wrap || look.across !== before.across || look.down !== before.down;
  if (placed) attributes = withAttribute(attributes, "applyAlignment", "1");
  const inner = placed ? alignment(styles, look) : (format?.inner ?? "");
  const { prefix } = styles;
  return append(styles, "cellXfs", `<${prefix}xf${attributes}>${inner}</${prefix}xf>`);
}

function applied(attributes: string, [name, value]: [string, number], apply: string): string {
  return withAttribute(withAttribute(attributes, name, String(value)), apply, "1");
}

/** Numbers from 164 are the workbook's own. */
function patternNumber(styles: Styles, pattern = "General"): number {
  const builtIn = Object.entries<string>(SSF.get_table()).find(([id, one]) => Number(id) < 50 && one === pattern);
  if (builtIn !== undefined) return Number(builtIn[0]);
  const own = elements(element(styles.xml, "numFmts")?.inner ?? "", "numFmt").map(({ attributes }) => ({
    id: Number(attribute(attributes, "numFmtId")),
    code: attribute(attributes, "formatCode"),
  }));
  const known = own.find(({ code }) => code === pattern);
  if (known !== undefined) return known.id;
  const id = Math.max(163, ...own.map((one) => one.id)) + 1;
  append(styles, "numFmts", `<${styles.prefix}numFmt numFmtId="${id}" formatCode="${escaped(pattern)}"/>`);
  return id;
}

/** The letters that the cell had, but for what the look says; the order of the tags is Excel's. */
function fontNumber(styles: Styles, { bold, italic, ink }: Look, attributes: string): number {
  const { prefix } = styles;
  const fonts = elements(element(styles.xml, "fonts")?.inner ?? "", "font");
  const before = fonts[Number(attribute(attributes, "fontId") ?? 0)]?.inner ?? "";
  const colour = ink === undefined ? "" : `<${prefix}color rgb="FF${ink.slice(1).toUpperCase()}"/>`;
  const rest = ["b", "i", "color"].reduce((text, name) => replaced(text, name, () => ""), before);
  const size = element(rest, "sz")?.end ?? 0;
  const marks = (bold ? `<${prefix}b/>` : "") + (italic ? `<${prefix}i/>` : "");
  return append(
    styles,
    "fonts",
    `<${prefix}font>${marks}${rest.slice(0, size)}${colour}${rest.slice(size)}</${prefix}font>`,
  );
}

function fillNumber(styles: Styles, fill: string | undefined): number {
  if (fill === undefined) return 0;
  const { prefix: p } = styles;
  const colour = `<${p}fgColor rgb="FF${fill.slice(1).toUpperCase()}"/><${p}bgColor indexed="64"/>`;
  return append(
    styles,
    "fills",
    `<${p}fill><${p}patternFill patternType="solid">${colour}</${p}patternFill></${p}fill>`,
  );
}

function alignment({ prefix }: Styles, { across, down, wrap }: Look): string {
  const vertical = down === "middle" ? "center" : down;
  const attributes =
    (across === undefined ? "" : ` horizontal="${across}"`) +
    (vertical === undefined ? "" : ` vertical="${vertical}"`) +
    (wrap === true ? ' wrapText="1"' : "");
  return `<${prefix}alignment${attributes}/>`;
}

/** Puts an entry at the end of a list of the styles, and answers with its number. */
function append(styles: Styles, list: string, entry: string): number {
  const { prefix } = styles;
  if (element(styles.xml, list) === undefined) {
    const first = /<(?:\w+:)?styleSheet[^>]*>/;
    styles.xml = styles.xml.replace(first, (root) => `${root}<${prefix}${list} count="0"></${prefix}${list}>`);
  }
  let number = 0;
  styles.xml = replaced(styles.xml, list, (whole) => {
    const { attributes, inner } = element(whole, list) ?? { attributes: "", inner: "" };
    number = elements(
      inner,
      entry
        .slice(1)
        .replace(prefix, "")
        .split(/[\s>/]/)[0] ?? "",
    ).length;
    return inside(
      `<${prefix}${list}${withAttribute(attributes, "count", String(number + 1))}>${inner}</${prefix}${list}>`,
      list,
      entry,
    );
  });
  return number;
}
