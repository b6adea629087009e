import type { Absence } from "../nouns/known";

/**
 * The text that stands in a missing figure's place, in the table and alone (METHODS section 8).
 * No text is a none-word and none begins with a lost-word, so that no answer is misread as data; the one exception
 * is the "–" that stands for the degrees of freedom of a rank test.
 */
export function absenceText(absence: Absence): string {
  if (absence.absent === "some-not-recorded") return `not known: ${absence.count} not recorded`;
  return texts[absence.absent];
}

const texts: Readonly<Record<Exclude<Absence["absent"], "some-not-recorded">, string>> = {
  "one-plant": "one plant: no unevenness",
  "one-plant-only": "one plant",
  "all-equal": "all values equal: check the data",
  "no-usable-plants": "no usable plants",
  "no-upper-limit": "no upper limit",
  "no-lower-limit": "no lower limit above −100 %",
  "single-figures": "one figure each: no range",
  "usual-not-above-zero": "usual average is not above 0: no percent",
  "new-below-zero": "new average is below 0: no percent",
  "average-zero": "average is 0",
  "average-below-zero": "average is below 0",
  "total-only": "a total does not say",
  "no-losses": "no losses",
  "no-degrees-of-freedom": "–",
  "too-few-plants": "none: too few plants",
  "not-practical": "more than 500: not practical",
  "zero-total": "a total is 0: no percent",
  weights: "weights: no such range",
  "luck-of-counting": "never: luck in the counts may do it",
  "one-trial": "one trial: no range",
  "no-extra": "no extra to pay for",
  "no-next-planting": "give next_plants to see this",
};
