import { numfmt } from "@univerjs/core";
import type { BookChart } from "../../../files/book";

/** A rectangle, in pixels of the sheet. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** One thing to be painted. */
export type Shape =
  | { readonly shape: "bar"; readonly usual: boolean; readonly box: Box }
  | { readonly shape: "line"; readonly box: Box }
  | {
      readonly shape: "text";
      readonly text: string;
      readonly left: number;
      /** Of the letters' middle. */
      readonly middle: number;
      readonly bold: boolean;
    };

const edge = 12;
const heading = 34;
const gap = 8;
const highestBar = 26;

/**
 * A chart as shapes within a box: the title, and a bar a row with its name before it and its figure behind it. Bars
 * start at a common zero, so that their lengths compare as the figures do. Figures are written as the grid writes them
 * in cells of that number format.
 *
 * @param widthOf how wide a text is in the letters that it will be painted in
 */
export function chartShapes(
  { title, bars, pattern }: BookChart,
  { left, top, width, height }: Box,
  widthOf: (text: string) => number,
): readonly Shape[] {
  const texts = bars.map(({ figure }) => numfmt.format(pattern, figure));
  const figures = Math.max(0, ...texts.map(widthOf));
  const most = width * 0.4;
  const names = bars.map(({ name }) => fitted(name, (text) => widthOf(text) <= most));
  const from = left + edge + Math.max(0, ...names.map(widthOf)) + gap;
  const room = Math.max(1, left + width - edge - gap - figures - from);
  const [low, high] = [
    Math.min(0, ...bars.map(({ figure }) => figure)),
    Math.max(0, ...bars.map(({ figure }) => figure)),
  ];
  const place = (figure: number) => from + ((figure - low) / (high - low || 1)) * room;
  const step = (height - heading - edge) / Math.max(1, bars.length);
  const thick = Math.min(highestBar, step * 0.7);
  const rows = bars.flatMap(({ figure, usual }, at): Shape[] => {
    const middle = top + heading + step * (at + 0.5);
    const [start, end] = [place(Math.min(0, figure)), place(Math.max(0, figure))];
    return [
      { shape: "text", text: names[at] ?? "", left: left + edge, middle, bold: false },
      {
        shape: "bar",
        usual,
        box: { left: start, top: middle - thick / 2, width: end - start, height: thick },
      },
      { shape: "text", text: texts[at] ?? "", left: end + gap, middle, bold: false },
    ];
  });
  const zero: Box = { left: place(0) - 0.5, top: top + heading, width: 1, height: height - heading - edge };
  return [
    { shape: "text", text: title, left: left + edge, middle: top + heading / 2 + 2, bold: true },
    ...rows,
    { shape: "line", box: zero },
  ];
}

/** A text cut to what fits, by whole characters. */
function fitted(text: string, fits: (text: string) => boolean): string {
  if (fits(text)) return text;
  const characters = [...text];
  while (characters.length > 1 && !fits(`${characters.join("")}…`)) characters.pop();
  return `${characters.join("").trimEnd()}…`;
}
