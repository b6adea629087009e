/** The four ways of covering the soil at Marlpit Corner; bare soil is the usual one. */
export type Mulch = "Bare soil" | "Straw" | "Woodchip" | "Grass clippings";

/** One plant of the trial: bed and spot within it, down the slope; grams of courgettes, or what became of it. */
export interface TrialPlant {
  readonly bed: number;
  readonly spot: number;
  readonly mulch: Mulch;
  readonly grams: number | string;
}

const mulches: readonly Mulch[] = ["Bare soil", "Straw", "Woodchip", "Grass clippings"];

/** Bed, grams under each mulch in that order, and the spots that were drawn by lot for them (invented). */
const beds: readonly (readonly [bed: number, grams: readonly (number | string)[], spots: readonly number[]])[] = [
  [1, [2252, 3249, 2409, 3423], [2, 3, 1, 4]],
  [2, [3203, 4245, 2295, "lost (slugs)"], [3, 4, 2, 1]],
  [3, [2264, 3972, 2148, 2611], [4, 3, 1, 2]],
  [4, [2705, "lost (wheelbarrow)", 3151, 4474], [1, 3, 4, 2]],
  [5, [3242, 2494, 3056, 2174], [2, 1, 3, 4]],
  [6, [2787, 4278, 3506, 3589], [3, 2, 4, 1]],
  [7, [4152, 6923, 3693, 3673], [2, 1, 4, 3]],
  [8, [3542, 5293, 4311, 3863], [2, 1, 4, 3]],
];

/** All plants of the trial, bed by bed and within a bed by mulch. */
export const marlpitCorner: readonly TrialPlant[] = beds.flatMap(([bed, grams, spots]) =>
  mulches.map((mulch, at) => ({ bed, spot: spots[at] ?? 0, mulch, grams: grams[at] ?? "" })),
);
