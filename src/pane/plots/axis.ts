import { amountText } from "../../words/amount";
import type { Mark } from "./picture";
import { type Scale, ticks } from "./scale";

/** What an axis along the bottom runs over. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  /** How far down it lies. */
  readonly at: number;
  readonly place: Scale;
  readonly unit: string | null;
}

/** A line with round figures below it, the unit behind the last. */
export function axis({ low, high, at, place, unit }: Axis): readonly Mark[] {
  const figures = ticks(low, high, 5);
  const line: Mark = {
    mark: "line",
    look: "axis",
    points: [
      [place(low), at],
      [place(high), at],
    ],
  };
  return [
    line,
    ...figures.flatMap((value, index) =>
      tick(place(value), index === figures.length - 1 ? amountText(value, unit) : amountText(value)),
    ),
  ];

  function tick(x: number, text: string): readonly Mark[] {
    const anchor = x < place(low) + 8 ? "start" : x > place(high) - 20 ? "end" : "middle";
    return [
      {
        mark: "line",
        look: "axis",
        points: [
          [x, at],
          [x, at + 3],
        ],
      },
      { mark: "text", look: "tick", at: [x, at + 14], text, anchor },
    ];
  }
}
