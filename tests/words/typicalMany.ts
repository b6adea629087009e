import type { ManyTreatments } from "../../src/nouns/findings/manyTreatments";
import { against, manyTreatments, pair, treatment } from "./manyRecords";

/*
 * The demo garden Marlpit Corner: four mulches in eight beds. Averages, ranges and p as METHODS section 11 prints them
 * from R 4.2.2; the pairs' p are R's ptukey (tests/reference/manyTreatments.R).
 */

const inBeds = {
  unit: "g",
  beds: ["1", "2", "3", "4", "5", "6", "7", "8"],
  pAllTogether: 0.00444,
  unevenness: 0.2004,
  df: 19,
} as const;
const straw = { name: "Straw", plants: 7, mean: 4350.571, bedsRemoved: 4392.2 } as const;
const grass = { name: "Grass clippings", plants: 7, mean: 3401, bedsRemoved: 3365.8 } as const;
const woodchip = { name: "Woodchip", plants: 8, mean: 3071.125, bedsRemoved: 3071.1 } as const;
const bare = { name: "Bare soil", plants: 8, mean: 3018.375, bedsRemoved: 3018.4 } as const;

const againstBareSoil: ManyTreatments = manyTreatments({
  ...inBeds,
  usual: "Bare soil",
  treatments: [
    treatment({
      ...straw,
      againstUsual: against({
        change: 0.4552,
        changeRange: { low: 0.1304, high: 0.95 },
        verdict: "up-enough",
        pValue: 0.0032449,
      }),
    }),
    treatment({
      ...grass,
      againstUsual: against({
        change: 0.1151,
        changeRange: { low: -0.1694, high: 0.5115 },
        verdict: "open",
        pValue: 0.66304,
      }),
    }),
    treatment({
      ...woodchip,
      againstUsual: against({
        change: 0.0175,
        changeRange: { low: -0.245, high: 0.3751 },
        verdict: "open",
        pValue: 0.99747,
      }),
    }),
    { ...treatment(bare), isUsual: true },
  ],
});

const allPairs: ManyTreatments = manyTreatments({
  ...inBeds,
  usual: null,
  treatments: [
    treatment({ ...straw, letters: "a" }),
    treatment({ ...grass, letters: "ab" }),
    treatment({ ...woodchip, letters: "b" }),
    treatment({ ...bare, letters: "b" }),
  ],
  pairs: [
    pair("Straw", "Bare soil", 0.005863804479742107),
    pair("Straw", "Woodchip", 0.008095545045487595),
    pair("Straw", "Grass clippings", 0.05955725475283569),
    pair("Grass clippings", "Bare soil", 0.7703764234182107),
    pair("Grass clippings", "Woodchip", 0.8449042477599084),
    pair("Woodchip", "Bare soil", 0.9986672200710286),
  ],
});

/** By the title of the approved file's section. */
export const typicalMany: Readonly<Record<string, ManyTreatments>> = {
  "COMPAREMANY four mulches in beds against bare soil": againstBareSoil,
  "COMPAREMANY four mulches in beds, all pairs": allPairs,
};
