import type { Mark, Point } from "./picture";

/** A straight line from one point to another. */
export function line(look: string, from: Point, to: Point): Mark {
  return { mark: "line", look, points: [from, to] };
}
