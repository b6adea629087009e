/**
 * Tags of Excel's parts, found by their text. Excel, LibreOffice and their kin write plain tags with quoted
 * attributes; changing a part by its text keeps every other byte of it. A worker has no document parser.
 */

/** One tag. */
export interface Tag {
  /** Its name without a prefix. */
  readonly name: string;
  /** What stands between name and end: ` r="B2" s="5"`. */
  readonly attributes: string;
  /** What stands between start and end tag; "" of `<c/>`. */
  readonly inner: string;
  /** Where it starts in the text, and the place behind its end. */
  readonly start: number;
  readonly end: number;
}

/**
 * The elements of a name, which must not hold another of the same name.
 *
 * @param name or several: "font", "row|cols"
 */
export function elements(xml: string, name: string): Tag[] {
  return [...xml.matchAll(elementPattern(name))].map(tagOf);
}

/** The first element of a name. */
export function element(xml: string, name: string): Tag | undefined {
  const pattern = elementPattern(name);
  pattern.lastIndex = 0;
  const found = pattern.exec(xml);
  return found === null ? undefined : tagOf(found);
}

/** The pattern of a tag's attributes, which it catches as one text. */
export const attributesPattern = `((?:\\s+[\\w:.-]+\\s*=\\s*(?:"[^"]*"|'[^']*'))*)\\s*`;

const elementPattern = remembered(
  (name) => new RegExp(`<((?:\\w+:)?)(${name})${attributesPattern}(?:/>|>([\\s\\S]*?)</\\1\\2\\s*>)`, "g"),
);
const attributePattern = remembered((name) => new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`));

/** Sheets have hundreds of thousands of tags and few names. */
function remembered(patternOf: (name: string) => RegExp): (name: string) => RegExp {
  const known = new Map<string, RegExp>();
  return (name) => {
    const pattern = known.get(name) ?? patternOf(name);
    known.set(name, pattern);
    return pattern;
  };
}

function tagOf(found: RegExpExecArray): Tag {
  const [whole, , name = "", attributes = "", inner = ""] = found;
  return { name, attributes, inner, start: found.index, end: found.index + whole.length };
}

/** The value of an attribute, by its name with its prefix. */
export function attribute(attributes: string, name: string): string | undefined {
  const found = attributePattern(name).exec(attributes);
  const value = found?.[1] ?? found?.[2];
  return value === undefined ? undefined : unescaped(value);
}

/** The attributes with one of them set, or taken out where the value is undefined. */
export function withAttribute(attributes: string, name: string, value: string | undefined): string {
  const without = attributes.replace(new RegExp(`\\s+${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), "");
  return value === undefined ? without : `${without} ${name}="${escaped(value)}"`;
}

/** The prefix of a part's own tags, with its colon: "" mostly, "x:" of some writers. */
export function prefixOf(xml: string, root: string): string {
  return new RegExp(`<(\\w+:)?${root}[\\s>/]`).exec(xml)?.[1] ?? "";
}

/** A text as it stands in XML; characters that XML cannot hold are left out. */
export function escaped(text: string): string {
  return text
    .replaceAll(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

const entities: ReadonlyMap<string, string> = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);
const lastCharacter = 0x10ffff;

/** The text that stands in XML; what is no character reference stays as it is. */
export function unescaped(xml: string): string {
  if (!xml.includes("&")) return xml;
  return xml.replaceAll(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (whole: string, ...found) => {
    const [hex, decimal, name] = found as (string | undefined)[];
    if (name !== undefined) return entities.get(name) ?? whole;
    const code = hex === undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return code <= lastCharacter ? String.fromCodePoint(code) : whole;
  });
}
