/** The share of a distribution below a point and the share above it; the smaller one keeps its relative accuracy. */
export interface Tails {
  readonly lower: number;
  readonly upper: number;
}

/** Both tails when the lower one was computed. */
export function fromLower(lower: number): Tails {
  return { lower, upper: 1 - lower };
}

/** Both tails when the upper one was computed. */
export function fromUpper(upper: number): Tails {
  return { lower: 1 - upper, upper };
}
