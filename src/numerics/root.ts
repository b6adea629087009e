/** Where to look, and how exactly: the two ends, low < high, and how narrow the answer's bracket may be, as a share. */
export type Search = readonly [low: number, high: number, relativeTolerance: number];

/**
 * A place where f changes sign, by halving.
 *
 * @param f continuous between the two ends, and of opposite sign there (or zero at one of them)
 * @param search low, high and the tolerance; a tolerance of 0 goes on to neighbouring doubles
 * @returns the middle of the last bracket; NaN when both ends have the same sign or f gives NaN
 */
export function bisect(f: (x: number) => number, ...search: Search): number {
  const [low, high, relativeTolerance] = search;
  const lowSign = Math.sign(f(low));
  const highSign = Math.sign(f(high));
  if (lowSign * highSign === 0) return lowSign === 0 ? low : high;
  if (lowSign * highSign !== -1) return Number.NaN;

  let [left, right] = [low, high];
  let middle = left + (right - left) / 2;
  while (left < middle && middle < right && !isNarrow(left, right, relativeTolerance)) {
    const side = Math.sign(f(middle)) * lowSign;
    if (Number.isNaN(side)) return Number.NaN;
    if (side >= 0) left = middle;
    if (side <= 0) right = middle;
    middle = left + (right - left) / 2;
  }
  return middle;
}

/**
 * A place where a smooth f changes sign, in few evaluations: false position with halved weights (the Illinois rule).
 *
 * @param f and search: as for bisect
 * @returns the last guess; NaN when both ends have the same sign or f gives NaN
 *
 * Source: Dowell & Jarratt (1971), BIT 11, 168–174.
 */
export function falsePosition(f: (x: number) => number, ...search: Search): number {
  const [low, high, relativeTolerance] = search;
  let left = { x: low, y: f(low) };
  let right = { x: high, y: f(high) };
  if (left.y * right.y === 0) return left.y === 0 ? low : high;
  if (!(left.y * right.y < 0)) return Number.NaN;

  for (let round = 0; round < 500; round += 1) {
    if (isNarrow(left.x, right.x, relativeTolerance)) return right.x;
    const x = right.x - (right.y * (right.x - left.x)) / (right.y - left.y);
    const next = { x, y: f(x) };
    if (next.y === 0) return x;
    left = next.y * right.y < 0 ? right : { x: left.x, y: left.y / 2 };
    right = next;
  }
  return Number.NaN;
}

function isNarrow(left: number, right: number, relativeTolerance: number): boolean {
  return Math.abs(right - left) <= relativeTolerance * Math.max(Math.abs(left), Math.abs(right));
}
