/**
 * Keeps dots on one line from covering each other: each is lifted or lowered just enough.
 *
 * @param places along the line
 * @param size across a dot
 * @param reach how far a dot may leave the line; beyond it dots cover each other
 * @returns how far each dot leaves the line, in the order given
 */
export function dodge(places: readonly number[], size: number, reach: number): readonly number[] {
  const levels = Array.from(
    { length: 2 * Math.floor(reach / size) + 1 },
    (_, at) => Math.ceil(at / 2) * (at % 2 ? -size : size),
  );
  const ends = levels.map(() => Number.NEGATIVE_INFINITY);
  const lifts = places.map(() => 0);
  const order = [...places.keys()].sort((one, other) => (places[one] ?? 0) - (places[other] ?? 0));
  for (const index of order) {
    const place = places[index] ?? 0;
    const free = Math.max(
      ends.findIndex((end) => place - end >= size),
      0,
    );
    ends[free] = place;
    lifts[index] = levels[free] ?? 0;
  }
  return lifts;
}
