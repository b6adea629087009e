import type { Finding } from "../../src/nouns/finding";
import type { HalfPicked } from "../../src/nouns/findings/halfPicked";
import type { PickCurve } from "../../src/nouns/findings/pickCurve";
import type { PickNote, PickTally, TalliedPlant } from "../../src/nouns/findings/pickTally";
import picksInR from "../reference/picks.json";
import { cell, placeAndSeason, row } from "./records";

/*
 * Pick logs of the demo garden Marlpit Corner: figures of the messy log as METHODS section 4 reads it
 * (tests/reference/demoLogMessyTotals.csv), and of the clean one from R (tests/reference/picks.R).
 */

function plant(name: string, facts: Partial<TalliedPlant>): TalliedPlant {
  return {
    plant: name,
    treatment: "Straw",
    bed: "1",
    status: "ok",
    rows: 12,
    picked: 3249,
    nothingRead: false,
    picks: 12,
    weightsMissing: 0,
    first: 45103,
    last: 45154,
    notes: [],
    ...facts,
  };
}

function tally(facts: Partial<PickTally>): PickTally {
  return {
    finding: "pick-tally",
    unit: "g",
    plants: [plant("B1-3", {}), plant("B1-4", {})],
    rows: 24,
    leftOut: [],
    withTreatments: true,
    yearsKnown: true,
    cautions: () => [placeAndSeason],
    ...facts,
  };
}

const everyNote: readonly PickNote[] = [
  { note: "picked-later", amount: 530 },
  { note: "picked-later", amount: 0 },
  { note: "weight-missing", place: cell("F92"), text: "", why: "empty" },
  { note: "weight-missing", place: cell("F93"), text: "forgot", why: "text" },
  { note: "entered-twice", place: cell("C219"), like: cell("C218") },
  { note: "far-above", place: cell("F60"), amount: 2220 },
  { note: "date-unclear", place: cell("A72"), text: "5/7" },
  { note: "date-unclear", place: cell("A73"), text: "" },
  {
    note: "two-names",
    of: "treatment",
    names: [
      { name: "Bare soil", rows: 9 },
      { name: "bare", rows: 1 },
    ],
  },
  { note: "listed-otherwise", of: "bed", listed: "7", logged: "8" },
  { note: "not-listed" },
  { note: "read-as", place: cell("F158"), text: "0,726 kg", amount: 726 },
];

const { cases: inR } = picksInR;

const curve: PickCurve = {
  finding: "pick-curve",
  unit: "g",
  treatments: inR.mulches.map((name, mulch) => ({
    name,
    setOut: 8,
    running: inR.running.map((sums) => sums[mulch] ?? 0),
    lastWeek: inR.lastWeek[mulch] ?? null,
    halfBy: inR.mulchHalves[mulch] ?? null,
  })),
  steps: inR.steps,
  perPlant: true,
  yearsKnown: true,
  leftOut: 0,
  weightsMissing: 0,
  cautions: () => [placeAndSeason],
};

/** Plants of the clean log with the days that R found. */
function half(facts: Partial<HalfPicked>): HalfPicked {
  return {
    finding: "half-picked",
    plants: Object.entries(inR.halves).map(([plant, day], at) => ({ plant, day, place: row("plants", at + 1) })),
    start: inR.first,
    startGiven: false,
    yearsKnown: true,
    mean: Object.values(inR.halves).reduce((sum, day) => sum + day, 0) / Object.keys(inR.halves).length,
    cautions: () => [placeAndSeason],
    ...facts,
  };
}

/** By the title of the approved file's section. */
export const typicalPicks: Readonly<Record<string, Finding>> = {
  "TALLYPICKS two plants, all well": tally({}),
  "TALLYPICKS a messy log": tally({
    plants: [
      plant("B1-3", { notes: everyNote.slice(5) }),
      plant("B2-2", { status: "weight-missing", weightsMissing: 1, picked: 2177, notes: everyNote.slice(2, 5) }),
      plant("B4-3", {
        status: "lost-picked-later",
        picked: 1365,
        notes: [{ note: "lost", place: cell("F332"), text: "lost (wheelbarrow)" }, ...everyNote.slice(0, 2)],
      }),
    ],
    rows: 328,
    leftOut: [
      { place: cell("C108"), why: "total-row" },
      { place: cell("C208"), why: "no-label" },
    ],
    cautions: () => [
      {
        caution: "C03",
        losses: [{ name: "Straw", role: "usual", lost: 1, setOut: 8 }],
        change: { absent: "no-usable-plants" },
        changeLostAsZero: { absent: "no-usable-plants" },
        strong: false,
        countedAsZero: false,
      },
      { caution: "C20", count: 2 },
      { caution: "C14", count: 5 },
      placeAndSeason,
    ],
  }),
  "TALLYPICKS one row of one plant, no treatments": tally({
    plants: [plant("B1-3", { picks: 1, rows: 1, picked: 300 })],
    rows: 1,
    withTreatments: false,
    unit: null,
    leftOut: Array.from({ length: 9 }, (_, at) => ({ place: row("plants", at + 3), why: "no-label" as const })),
  }),
  "PICKCURVE four mulches": curve,
  "PICKCURVE six treatments, totals, not all read": {
    ...curve,
    treatments: [...curve.treatments, ...curve.treatments.slice(0, 2)].map((one) => ({ ...one, setOut: null })),
    perPlant: false,
    yearsKnown: false,
    leftOut: 3,
    weightsMissing: 1,
    cautions: () => [{ caution: "C37" }, { caution: "C20", count: 2 }, placeAndSeason],
  },
  "PICKCURVE nothing picked": {
    ...curve,
    treatments: [{ name: "Straw", setOut: 8, running: [0], lastWeek: null, halfBy: null }],
    steps: inR.steps.slice(0, 1),
    leftOut: 1,
  },
  "HALFPICKED the clean log": half({}),
  "HALFPICKED one plant of four, from a given start": half({
    plants: ([16, "lost", "no harvest", "not recorded"] as const).map((day, at) => ({
      plant: `B1-${at + 1}`,
      day,
      place: row("plants", at + 1),
    })),
    startGiven: true,
    mean: 16,
  }),
  "HALFPICKED no plant": half({
    plants: [{ plant: "B2-1", day: "lost", place: row("plants", 1) }],
    mean: { absent: "no-usable-plants" },
  }),
};
