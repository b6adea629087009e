/** Why a figure is missing. The text that stands in its place is in words/absence.ts. */
export type Absence =
  | { readonly absent: "one-plant" }
  | { readonly absent: "one-plant-only" }
  | { readonly absent: "all-equal" }
  | { readonly absent: "no-usable-plants" }
  | { readonly absent: "no-upper-limit" }
  | { readonly absent: "no-lower-limit" }
  | { readonly absent: "single-figures" }
  | { readonly absent: "usual-not-above-zero" }
  | { readonly absent: "new-below-zero" }
  | { readonly absent: "average-zero" }
  | { readonly absent: "average-below-zero" }
  | { readonly absent: "total-only" }
  | { readonly absent: "some-not-recorded"; readonly count: number }
  | { readonly absent: "no-losses" }
  | { readonly absent: "no-degrees-of-freedom" }
  | { readonly absent: "too-few-plants" }
  | { readonly absent: "not-practical" }
  | { readonly absent: "zero-total" }
  | { readonly absent: "weights" }
  | { readonly absent: "luck-of-counting" }
  | { readonly absent: "one-trial" }
  | { readonly absent: "no-extra" }
  | { readonly absent: "no-next-planting" };

/** A figure, or the reason why there is none. */
export type Known = number | Absence;

export function isKnown(figure: Known): figure is number {
  return typeof figure === "number";
}

/** The two ends of a range; an end without limit says so. */
export interface Limits {
  readonly low: Known;
  readonly high: Known;
}
