import { extent } from "./extent";
import { line } from "./line";
import type { Mark } from "./picture";
import type { Scale } from "./scale";

/** Amounts along a picture's axis: from, to. */
export type Span = readonly [low: number, high: number];

/** The two ends of a range as amounts; null for an end without limit. */
export type RangeEnds = readonly [low: number | null, high: number | null];

/** A range as a bar along a picture's axis. */
export interface RangeBar {
  readonly ends: RangeEnds;
  /** What the picture shows of the axis. */
  readonly span: Span;
  /** How far down the bar lies. */
  readonly at: number;
  readonly place: Scale;
}

/** From the lowest to the highest value, wider for the ends of ranges, up to half as wide again on a side. */
export function shownSpan(values: readonly number[], ends: readonly (number | null)[]): Span {
  const [low, high] = extent(values);
  const room = (high - low || Math.abs(high) || 1) / 2;
  const known = ends.filter((end) => end !== null);
  const [least, most] = extent([low, high, ...known]);
  return [Math.max(least, low - room), Math.min(most, high + room)];
}

/** The bar; an end that lies outside the picture, or has no limit, is an arrow. */
export function rangeBar({ ends, span: [low, high], at, place }: RangeBar): readonly Mark[] {
  const [from, to] = [place(Math.max(ends[0] ?? low, low)), place(Math.min(ends[1] ?? high, high))];
  const isInside = (end: number | null) => end !== null && end >= low && end <= high;
  return [
    line("range", [from, at], [to, at]),
    isInside(ends[0]) ? cap(from, at) : arrow(from, at, 5),
    isInside(ends[1]) ? cap(to, at) : arrow(to, at, -5),
  ];
}

function cap(x: number, at: number): Mark {
  return line("range", [x, at - 4], [x, at + 4]);
}

function arrow(x: number, at: number, back: number): Mark {
  const tip = [x, at] as const;
  return { mark: "line", look: "range", points: [[x + back, at - 4], tip, [x + back, at + 4]] };
}
