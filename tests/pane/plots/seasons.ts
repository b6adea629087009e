import type { ManyTrials } from "../../../src/nouns/findings/manyTrials";
import type { TotalsOnly } from "../../../src/nouns/findings/totalsOnly";
import type { WorthIt } from "../../../src/nouns/findings/worthIt";

/** Three trials written down by hand: +50 %, +20 % and −10 %, together +18 %. */
export const threeTrials: ManyTrials = {
  finding: "many-trials",
  names: { usual: "Bare soil", tried: "Straw" },
  rowIs: "crop",
  trials: [trial("courgettes", 2, 3, 2), trial(null, 5, 6, 3), trial("a crop with quite a long name", 10, 9, 4)],
  leftOut: [],
  change: 0.18,
  changeRange: { low: -0.25, high: 0.8 },
  verdict: "open",
  worthwhile: { size: 0.1, lessWanted: false, given: false },
  ahead: 2,
  behind: 1,
  cautions: () => [],
};

function trial(name: string | null, usual: number, tried: number, row: number): ManyTrials["trials"][number] {
  const place = { argument: "usual_averages", row, column: null, cell: `B${row}` };
  return { name, usual, tried, change: tried / usual - 1, place };
}

/** METHODS 10, item 53: 1.2 kg more at 2.50, cost 1.10, so 1.90 left (−0.35 to 4.15). */
export const worthOfStraw: WorthIt = {
  finding: "worth-it",
  names: { usual: "Bare soil", tried: "Straw" },
  unit: "kg",
  single: false,
  how: "separate",
  usualPlants: 6,
  triedPlants: 6,
  usualMean: 3,
  triedMean: 4.2,
  price: 2.5,
  extraCost: 1.1,
  verdict: "may-or-may-not",
  harvest: "up-unclear",
  extra: 1.2,
  worth: 3,
  left: 1.9,
  leftRange: { low: -0.35, high: 4.15 },
  costOfExtra: 1.1 / 1.2,
  breakEvenExtra: 0.44,
  breakEvenChange: 0.44 / 3,
  nextPlants: null,
  nextPlanting: {
    low: { absent: "no-next-planting" },
    middle: { absent: "no-next-planting" },
    high: { absent: "no-next-planting" },
  },
  cautions: () => [],
};

/** METHODS 10, item 50: 24 pods from two plants, 72 from two. */
export const podsTotals: TotalsOnly = {
  finding: "totals-only",
  usual: { name: "Poles", total: 24, plants: 2, perPlant: 12 },
  tried: { name: "Strings", total: 72, plants: 2, perPlant: 36 },
  unit: null,
  weighed: null,
  unevenness: 0.35,
  unevennessGiven: false,
  nothingIn: null,
  change: 2,
  changeRange: { low: 0.511, high: 4.957 },
  realBelow: 0.561,
  countsOnly: { low: 0.9, high: 3.9 },
  bound: null,
  cautions: () => [],
};
