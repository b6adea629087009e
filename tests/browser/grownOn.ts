/** Grams of the demo trial by bed: what grew is known, only the spots are drawn anew. */
const grams: Readonly<Record<string, readonly (number | string)[]>> = {
  "Bare soil": [2252, 3203, 2264, 2705, 3242, 2787, 4152, 3542],
  Straw: [3249, 4245, 3972, "lost", 2494, 4278, 6923, 5293],
  Woodchip: [2409, 2295, 2148, 3151, 3056, 3506, 3693, 4311],
  "Grass clippings": [3423, "lost", 2611, 4474, 2174, 3589, 3673, 3863],
};

/** Names of the demo trial's mulches, the usual first. */
export const mulches = Object.keys(grams);

/** What grew on each spot of a plan, in the list's order. */
export function grownOn(order: readonly string[]): readonly (number | string)[] {
  const beds = new Set(order).size;
  return order.map((name, at) => grams[name]?.[Math.floor(at / beds)] ?? "");
}
