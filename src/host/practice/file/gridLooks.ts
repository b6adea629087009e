import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { Look } from "../../../files/book";

const across = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT } as const;
const down = { top: VerticalAlign.TOP, middle: VerticalAlign.MIDDLE, bottom: VerticalAlign.BOTTOM } as const;

/** A look in the grid's own form. */
export function gridStyle(look: Look): IStyleData {
  return {
    ...(look.pattern === undefined ? {} : { n: { pattern: look.pattern } }),
    ...(look.bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(look.italic ? { it: BooleanNumber.TRUE } : {}),
    ...(look.ink === undefined ? {} : { cl: { rgb: look.ink } }),
    ...(look.fill === undefined ? {} : { bg: { rgb: look.fill } }),
    ...(look.wrap ? { tb: WrapStrategy.WRAP } : {}),
    ...(look.across === undefined ? {} : { ht: across[look.across] }),
    ...(look.down === undefined ? {} : { vt: down[look.down] }),
  };
}

/** A style of the grid as a look; what a look does not know is left out. */
export function lookOf(style: IStyleData): Look {
  const pattern = style.n?.pattern;
  const [ink, fill] = [hex(style.cl?.rgb), hex(style.bg?.rgb)];
  return {
    ...(pattern === undefined || pattern === "" || pattern === "General" ? {} : { pattern }),
    ...(style.bl === BooleanNumber.TRUE ? { bold: true } : {}),
    ...(style.it === BooleanNumber.TRUE ? { italic: true } : {}),
    ...(ink === undefined ? {} : { ink }),
    ...(fill === undefined ? {} : { fill }),
    ...(style.tb === WrapStrategy.WRAP ? { wrap: true } : {}),
    ...named("across", across, style.ht),
    ...named("down", down, style.vt),
  };
}

function named(key: "across" | "down", values: Readonly<Record<string, number>>, value: unknown): Look {
  const name = Object.keys(values).find((one) => values[one] === value);
  return name === undefined ? {} : { [key]: name };
}

/** "#rrggbb", of that or of "rgb(…)". */
function hex(colour: Nullable<string>): string | undefined {
  if (typeof colour !== "string") return undefined;
  if (/^#[\da-f]{6}$/i.test(colour)) return colour.toLowerCase();
  const parts = colour.match(/\d+/g)?.slice(0, 3).map(Number);
  if (!colour.startsWith("rgb") || parts?.length !== 3) return undefined;
  return `#${parts.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
}
