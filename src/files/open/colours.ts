import { attribute, element, elements } from "../xml/xml";

/** The 56 colours that old workbooks count, from number 8 (ECMA-376 part 1, 18.8.27). */
const counted =
  "000000ffffffff000000ff000000ffffff00ff00ff00ffff800000008000000080808000800080008080c0c0c08080809999ff993366" +
  "ffffccccffff660066ff80800066ccccccff000080ff00ffffff0000ffff8000808000000080800000ff00ccffccffffccffccffff99" +
  "99ccffff99cccc99ffffcc993366ff33cccc99cc00ffcc00ff9900ff6600666699969696003366339966003300333300993300993366" +
  "333399333333";

/** The colours of Office's own theme, in the order in which files count them. */
const officeTheme = [
  "ffffff",
  "000000",
  "e7e6e6",
  "44546a",
  "4472c4",
  "ed7d31",
  "a5a5a5",
  "ffc000",
  "5b9bd5",
  "70ad47",
];

/** A theme's colours in the order in which cells count them: light and dark change places (18.8.3). */
export function themeColours(theme: string): readonly string[] {
  const scheme = element(theme, "clrScheme")?.inner ?? "";
  const found = ["lt1", "dk1", "lt2", "dk2", "accent1", "accent2", "accent3", "accent4", "accent5", "accent6"].map(
    (name, at) => {
      const [colour] = elements(element(scheme, name)?.inner ?? "", "srgbClr|sysClr");
      const value = attribute(colour?.attributes ?? "", colour?.name === "sysClr" ? "lastClr" : "val");
      return value ?? officeTheme[at] ?? "000000";
    },
  );
  return found;
}

/**
 * The colour that a tag names by red-green-blue, by number or by theme: "#4472c4".
 *
 * @returns undefined where it is left to the reader's computer
 */
export function colourOf(attributes: string, theme: readonly string[]): string | undefined {
  const plain = attribute(attributes, "rgb")?.slice(-6) ?? byNumber(attribute(attributes, "indexed"));
  const base = plain ?? theme[Number(attribute(attributes, "theme") ?? Number.NaN)];
  if (base === undefined || !/^[\da-f]{6}$/i.test(base)) return undefined;
  return `#${tinted(base, Number(attribute(attributes, "tint") ?? 0)).toLowerCase()}`;
}

/** The first eight colours are counted twice. */
function byNumber(number: string | undefined): string | undefined {
  if (number === undefined) return undefined;
  const at = Number(number) < 8 ? Number(number) : Number(number) - 8;
  return counted.slice(at * 6, at * 6 + 6) || undefined;
}

/**
 * Lighter for a tint above 0, darker below: the tint works on the lightness (18.8.19), which moves every part of the
 * colour in step with the distance from white or black.
 */
function tinted(colour: string, tint: number): string {
  if (tint === 0 || Number.isNaN(tint)) return colour;
  const parts = [0, 2, 4].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  const moved = parts.map((part) => Math.round(tint < 0 ? part * (1 + tint) : part + (255 - part) * tint));
  return moved.map((part) => part.toString(16).padStart(2, "0")).join("");
}
