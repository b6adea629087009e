import type { Finding } from "../../src/nouns/finding";
import {
  cell,
  chanceToSee,
  drawnLots,
  oneUnevenness,
  perPlant,
  placeAndSeason,
  plantsNeeded,
  smallestChange,
  unevenness,
  upDown,
} from "./records";
import { typicalReadings } from "./typicalReadings";

/*
 * Typical findings of the functions that compare no two treatments for luck. Figures: the demo garden Marlpit Corner,
 * and for the plans R 4.2.2's noncentral t with the same unevenness in both treatments.
 */

const straw = oneUnevenness({
  name: "Straw",
  plants: 7,
  mean: 4350.571,
  unevenness: 0.3294,
  range: { low: 0.2459, high: 0.5435 },
});
const guess = { caution: "C27", unevenness: 0.35 } as const;

/** By the title of the approved file's section. */
export const typicalFindings: Readonly<Record<string, Finding>> = {
  "UPDOWN 24 to 72": upDown({ usualMean: 24, triedMean: 72 }, [placeAndSeason, { caution: "C16", change: 2 }]),
  "UPDOWN 4 to 3": upDown({ usualMean: 4, triedMean: 3 }),
  "UPDOWN 0.5 kg to 0.51 kg": upDown({ usualMean: 0.5, triedMean: 0.51, unit: "kg" }),
  "UPDOWN 8 to 0": upDown({ usualMean: 8, triedMean: 0 }),
  "UPDOWN 8 to 8": upDown({ usualMean: 8, triedMean: 8 }),
  "UPDOWN 1000 to 1003": upDown({ usualMean: 1000, triedMean: 1003 }),
  "UPDOWN straw and bare soil": upDown({
    names: { usual: "Bare soil", tried: "Straw" },
    unit: "g",
    single: false,
    usualMean: 3018.375,
    triedMean: 4350.571,
    usualPlants: 8,
    triedPlants: 7,
    changeRange: { low: -0.006749543, high: 0.9478036 },
  }),
  "UPDOWN one plant and five": upDown({
    single: false,
    usualMean: 4,
    triedMean: 3,
    triedPlants: 5,
    changeRange: { low: { absent: "one-plant" }, high: { absent: "one-plant" } },
  }),
  "PERPLANT bare soil": perPlant({
    name: "Bare soil",
    unit: "g",
    perPlant: 3018.375,
    setOut: 8,
    counted: 8,
    total: 24147,
    perSurvivingPlant: 3018.375,
    perPlantSetOut: 3018.375,
  }),
  "PERPLANT straw with a lost plant left out": perPlant(
    {
      name: "Straw",
      unit: "g",
      perPlant: 4350.571,
      setOut: 8,
      lost: 1,
      counted: 7,
      total: 30454,
      perSurvivingPlant: 4350.571,
      perPlantSetOut: 3806.75,
    },
    [{ caution: "C04" }, placeAndSeason],
  ),
  "PERPLANT grass with a lost plant as zero": perPlant(
    {
      name: "Grass clippings",
      unit: "g",
      rule: "count as zero",
      perPlant: 2975.875,
      setOut: 8,
      lost: 1,
      counted: 8,
      total: 23807,
      perSurvivingPlant: 3401,
      perPlantSetOut: 2975.875,
    },
    [{ caution: "C04" }, placeAndSeason],
  ),
  "PERPLANT one plant not recorded": perPlant({
    perPlant: 3401,
    setOut: 8,
    notRecorded: 1,
    counted: 7,
    total: 23807,
    perSurvivingPlant: 3401,
    perPlantSetOut: { absent: "some-not-recorded", count: 1 },
  }),
  "PERPLANT season total": perPlant({
    unit: "g",
    fromTotal: true,
    perPlant: 3018.375,
    setOut: 8,
    lost: { absent: "total-only" },
    notRecorded: { absent: "total-only" },
    counted: 8,
    total: 24147,
    perSurvivingPlant: { absent: "total-only" },
    perPlantSetOut: 3018.375,
  }),
  "UNEVENNESS straw": unevenness({ treatments: [straw], all: straw }),
  "UNEVENNESS four mulches within beds": unevenness({
    treatments: [
      oneUnevenness({ name: "Bare soil", plants: 8, unevenness: 0.2151 }),
      straw,
      oneUnevenness({ name: "Woodchip", plants: 8, unevenness: 0.2465 }),
      oneUnevenness({ name: "Grass clippings", plants: 7, unevenness: 0.2279 }),
    ],
    all: oneUnevenness({ name: "All", plants: 30, unevenness: 0.2001, range: { low: 0.1673, high: 0.2555 } }),
    withinBeds: true,
    leftOut: [cell("A12"), cell("A19")],
  }),
  "UNEVENNESS one plant": unevenness(
    (({ one }) => ({ treatments: [one], all: one }))({
      one: oneUnevenness({ plants: 1, unevenness: { absent: "one-plant-only" } }),
    }),
  ),
  "UNEVENNESS average zero": unevenness(
    (({ zero }) => ({ treatments: [zero], all: zero }))({
      zero: oneUnevenness({ plants: 4, unevenness: { absent: "average-zero" } }),
    }),
  ),
  "UNEVENNESS all equal": unevenness(
    (({ equal }) => ({ treatments: [equal], all: equal }))({
      equal: oneUnevenness({ plants: 5, unevenness: 0, range: { low: 0, high: 0 } }),
    }),
    [placeAndSeason, { caution: "C17" }],
  ),
  "PLANTSNEEDED for +30 %": plantsNeeded(
    {
      change: 0.3,
      needed: 30,
      setOut: 34,
      inAll: 68,
      chanceToSee: 0.8036676,
      chanceEnough: 0.4393937,
      smallestWithHalf: () => 0.4653139,
      unevennessGiven: false,
    },
    [guess],
  ),
  "PLANTSNEEDED for +50 % in beds, no losses": plantsNeeded({
    change: 0.5,
    unevenness: 0.3,
    beds: "one each",
    losses: 0,
    needed: 11,
    setOut: 11,
    inAll: 22,
    chanceToSee: 0.8305145,
    chanceEnough: 0.6187799,
    smallestWithHalf: () => 0.9356571,
  }),
  "PLANTSNEEDED not practical": plantsNeeded({
    change: -0.03,
    treatments: 4,
    beds: 6,
    needed: { absent: "not-practical" },
    setOut: { absent: "not-practical" },
    inAll: { absent: "not-practical" },
    chanceToSee: { absent: "not-practical" },
    chanceEnough: { absent: "not-practical" },
    smallestWithHalf: () => ({ absent: "not-practical" }),
  }),
  "SMALLESTCHANGE 8 plants": smallestChange({ plantsEach: 8, unevenness: 0.3, change: 0.604148 }),
  "SMALLESTCHANGE 6 plants, less": smallestChange({ plantsEach: 6, change: -0.58, direction: "less" }),
  "SMALLESTCHANGE 2 plants": smallestChange({ plantsEach: 2, change: { absent: "too-few-plants" } }, [
    { caution: "C28" },
  ]),
  "CHANCETOSEE +50 % with 6 plants": chanceToSee({
    change: 0.5,
    plantsEach: 6,
    unevenness: 0.3,
    chanceToSee: 0.534038,
    chanceEnough: 0.3550819,
  }),
  "CHANCETOSEE +100 % with 2 plants": chanceToSee(
    { change: 1, plantsEach: 2, unevenness: 0.3, chanceToSee: 0.2350616, chanceEnough: 0.1968017 },
    [{ caution: "C28" }, { caution: "C29" }],
  ),
  "CHANCETOSEE no change": chanceToSee({
    change: 0,
    plantsEach: 8,
    treatments: 3,
    chanceToSee: 0.025,
    chanceEnough: 0.0002,
  }),
  "DRAWLOTS four mulches in eight beds": drawnLots({
    treatments: ["Bare soil", "Straw", "Woodchip", "Grass clippings"],
    plantsEach: 8,
    beds: 8,
  }),
  "DRAWLOTS two of three each in a bed": drawnLots({ treatments: ["A", "B", "C"], plantsEach: 4, beds: 2 }),
  "DRAWLOTS separate plants, three each": drawnLots({ treatments: ["Bare soil", "Straw"], plantsEach: 3, beds: null }, [
    { caution: "C28" },
    placeAndSeason,
  ]),
  "DRAWLOTS twenty long names": drawnLots({
    treatments: Array.from({ length: 20 }, (_, at) => `Mix ${at + 1} from the seed swap`),
    plantsEach: 6,
    beds: null,
  }),
  "DRAWLOTS no number yet": drawnLots({ treatments: ["A", "B"], plantsEach: 6, beds: null, drawNumber: null }),
  ...typicalReadings,
};
