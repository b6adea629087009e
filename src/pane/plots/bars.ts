import type { Mark, Picture } from "./picture";
import { scale } from "./scale";

/** One bar: a figure set against others from zero. */
export interface Bar {
  readonly name: string;
  readonly value: number;
  /** The value as it is read. */
  readonly text: string;
  readonly look: "usual" | "new";
}

const width = 326;
const edge = 8;
const step = 40;

/** Figures as bars from a common zero, so that their lengths compare as the figures do. */
export function barsPicture(bars: readonly Bar[], title: string, caption: string): Picture {
  const values = bars.map(({ value }) => value);
  const place = scale([Math.min(0, ...values), Math.max(0, ...values)], [edge, width - 80]);
  return {
    width,
    height: bars.length * step + 4,
    title,
    caption,
    marks: bars.flatMap((bar, index) => barMarks(bar, 14 + index * step)),
    spots: [],
    facts: bars.map(({ name, text }) => `${name}: ${text}.`),
  };

  function barMarks({ name, value, text, look }: Bar, at: number): readonly Mark[] {
    const [from, to] = [Math.min(place(0), place(value)), Math.max(place(0), place(value))];
    return [
      { mark: "text", look: `name ${look}`, at: [edge, at], text: name, anchor: "start" },
      { mark: "box", look: `bar ${look}`, from: [from, at + 5], to: [to, at + 19] },
      { mark: "text", look: "value", at: [to + 5, at + 16], text, anchor: "start" },
    ];
  }
}
