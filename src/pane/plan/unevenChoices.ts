/** How much single plants or plots of a crop vary, as published or as a guess. */
export interface UnevenChoice {
  readonly text: string;
  /** Standard deviation as a fraction of the average. */
  readonly unevenness: number;
  readonly source: string;
}

/**
 * Unevenness to plan with when the grower has no figures of their own. The published ones are coefficients of
 * variation between units that were all treated alike (uniformity trials); where several were found the higher stands.
 */
export const unevenChoices: readonly UnevenChoice[] = [
  {
    text: "I don’t know: single plants",
    unevenness: 0.35,
    source: "A general guess for single plants. Last year’s plants would be better.",
  },
  {
    text: "I don’t know: bags or plots of 6 plants",
    unevenness: 0.2,
    source: "A general guess for plots of six plants. Last year’s plots would be better.",
  },
  {
    text: "Strawberry, single plants",
    unevenness: 0.39,
    source: "Davis 1946, in Baker & Baker 1953: 39 % between 500 plants, 26 % between 200 others.",
  },
  { text: "Strawberry, plots of 6 plants", unevenness: 0.24, source: "Nagai 1978: 24 % between 432 plots." },
  {
    text: "Lettuce, single plants, winter greenhouse",
    unevenness: 0.32,
    source: "Published for lettuce in a winter greenhouse: 32 % between single plants.",
  },
  { text: "Radish, single roots", unevenness: 0.74, source: "Heath: 65 to 74 % between 399 roots in four blocks." },
  { text: "Cucumber, plots of 1.5 m", unevenness: 0.17, source: "Wehner: 17 % between 139 plots, picked once." },
  { text: "Grapevine, single vines", unevenness: 0.43, source: "Strickland: 43 % between 125 vines." },
  { text: "Peach, single trees", unevenness: 0.31, source: "Strickland: 31 % between 144 trees." },
  { text: "Apple, single trees", unevenness: 0.41, source: "Batchelor: 41 % between 224 trees." },
  {
    text: "Potato or cabbage, field plots",
    unevenness: 0.13,
    source: "Published uniformity trials: 9 to 13 % between 36 to 48 plots of many plants.",
  },
];
