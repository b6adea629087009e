/**
 * Moves places along one line so far apart that texts at them do not cover each other.
 *
 * @param places along the line, in any order
 * @param gap the least distance between two
 * @param last no place may lie beyond, as long as there is room before it
 * @returns a place for each, in the order given; those nearest to their own keep their order
 */
export function apart(places: readonly number[], gap: number, last: number): readonly number[] {
  const order = [...places.keys()].sort((one, other) => (places[one] ?? 0) - (places[other] ?? 0));
  const moved = [...places];
  let before = Number.NEGATIVE_INFINITY;
  for (const at of order) {
    before = Math.max(moved[at] ?? 0, before + gap);
    moved[at] = before;
  }
  let after = last + gap;
  for (const at of order.toReversed()) {
    after = Math.min(moved[at] ?? 0, after - gap);
    moved[at] = after;
  }
  return moved;
}
