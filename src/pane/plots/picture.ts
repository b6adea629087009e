/** A point of a picture, in its own units from the upper left corner. */
export type Point = readonly [x: number, y: number];

/** One mark of a picture; `look` is its class in pictures.css. */
export type Mark =
  | { readonly mark: "line"; readonly look: string; readonly points: readonly Point[] }
  | { readonly mark: "dot"; readonly look: string; readonly at: Point; readonly radius: number }
  | { readonly mark: "box"; readonly look: string; readonly from: Point; readonly to: Point }
  | {
      readonly mark: "text";
      readonly look: string;
      readonly at: Point;
      readonly text: string;
      readonly anchor: Anchor;
    };

/** Which end of a text stands at its point. */
export type Anchor = "start" | "middle" | "end";

/** A dot that stands for something in the sheet: it can be reached, read and followed. */
export interface Spot {
  readonly at: Point;
  readonly radius: number;
  readonly look: string;
  /** Which cell it is: argument, row and column within it. */
  readonly key: string;
  /** "Straw, C4: 4390 g" */
  readonly label: string;
}

/** A picture as data: what to draw, and the same in words for those who do not see it. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  /** What the picture shows, in a few words. */
  readonly title: string;
  /** How to read it; stands below the picture. */
  readonly caption: string;
  readonly marks: readonly Mark[];
  readonly spots: readonly Spot[];
  /** What there is to see, as sentences. */
  readonly facts: readonly string[];
}
