import type { ManyTreatments } from "../../src/nouns/findings/manyTreatments";
import { demoPlants } from "../functions/demo";
import reference from "../reference/manyBeds.json";
import oneWay from "../reference/manyOneWay.json";
import { askedMany, type PlantRow } from "./askedMany";
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

/* The rest is asked of real plants; the tests of COMPAREMANY hold its figures against R. */

const mulches: readonly PlantRow[] = demoPlants.map(({ grams, treatment: name, bed }) => [grams, name, bed]);
const withoutBeds = mulches.map(([grams, name]): PlantRow => [grams, name]);
const growth = separate("PlantGrowth", ["control", "treatment 1", "treatment 2"]);
const insects = separate(
  "InsectSprays",
  "ABCDEF".split("").map((letter) => `spray ${letter}`),
);
const rice = inFourBeds("rice");

function separate(name: string, names: readonly string[]): readonly PlantRow[] {
  const { groups = [] } = oneWay.cases.find((one) => one.name === name) ?? {};
  return groups.flatMap((values, at) => values.map((value): PlantRow => [value, names[at] ?? ""]));
}

function inFourBeds(name: string): readonly PlantRow[] {
  const { value = [], treatment: rates = [], bed = [] } = reference.cases.find((one) => one.name === name) ?? {};
  return value.map((amount, at): PlantRow => [amount, `${25 * ((rates[at] ?? 0) + 1)} kg`, (bed[at] ?? 0) + 1]);
}

/** By the title of the approved file's section. */
export const typicalMany: Readonly<Record<string, ManyTreatments>> = {
  "COMPAREMANY four mulches in beds against bare soil": againstBareSoil,
  "COMPAREMANY four mulches in beds, all pairs": allPairs,
  "COMPAREMANY four mulches in beds, two plants lost": askedMany(mulches, { usual: "Bare soil" }),
  "COMPAREMANY four mulches without their beds": askedMany(withoutBeds, { usual: "Bare soil" }),
  "COMPAREMANY four mulches, all pairs against bare soil": askedMany(mulches, { usual: "Bare soil", how: "all pairs" }),
  "COMPAREMANY plant growth, all pairs": askedMany(growth),
  "COMPAREMANY insect counts, all pairs": askedMany(insects),
  "COMPAREMANY insect counts, own unevenness, fewer wanted": askedMany(insects, {
    usual: "spray F",
    how: "own unevenness",
    worthwhile: -0.1,
  }),
  "COMPAREMANY six rates of seed in four beds": askedMany(rice, { usual: "100 kg" }),
  "COMPAREMANY six rates of seed in four beds, three plots missing": askedMany(inFourBeds("rice without three plots"), {
    usual: "100 kg",
  }),
  "COMPAREMANY two plants each": askedMany(
    [
      [20, "bare"],
      [24, "bare"],
      [31, "straw"],
      [40, "straw"],
      [22, "bark"],
      [27, "bark"],
    ],
    { usual: "bare" },
  ),
  "COMPAREMANY three plants each, one far ahead": askedMany(
    [20, 22, 24, 40, 41, 43, 21, 22, 25].map(
      (amount, at): PlantRow => [amount, ["bare", "straw", "bark"][Math.floor(at / 3)] ?? ""],
    ),
    { usual: "bare" },
  ),
  "COMPAREMANY a treatment lost whole, a row without a treatment, a bed with one treatment": askedMany(
    [
      ...mulches.map(([grams, name, bed]): PlantRow => [name === "Woodchip" ? "lost" : grams, name, bed ?? 0]),
      [3100, null, 3],
      [2900, "Straw", 9],
    ],
    { usual: "Bare soil" },
  ),
  "COMPAREMANY no plants of the usual": askedMany(
    withoutBeds.map(([grams, name]): PlantRow => [name === "Bare soil" ? "not weighed" : grams, name]),
    { usual: "Bare soil" },
  ),
  "COMPAREMANY all plants equal": askedMany(
    withoutBeds.map(([, name]): PlantRow => [3000, name]),
    { usual: "Bare soil" },
  ),
  "COMPAREMANY a usual that bore nothing": askedMany(
    withoutBeds.map(([grams, name]): PlantRow => [name === "Bare soil" ? 0 : grams, name]),
    { usual: "Bare soil" },
  ),
};
