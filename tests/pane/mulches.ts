import type { AgainstUsual, ManyTreatments, TreatmentFound } from "../../src/nouns/findings/manyTreatments";

const names = ["Straw", "Woodchip", "Bare soil"] as const;

/** Three mulches in three beds, written down by hand: what the pane draws must be exactly what stands here. */
const amounts: Readonly<Record<(typeof names)[number], readonly number[]>> = {
  Straw: [3000, 4000, 5000],
  Woodchip: [2500, 3500],
  "Bare soil": [2000, 3000, 4000],
};

/** Against bare soil, in beds, unless changed. */
export function mulches(change: Partial<ManyTreatments> = {}): ManyTreatments {
  return {
    finding: "many-treatments",
    how: "against usual",
    usual: "Bare soil",
    worthwhile: { size: 0.1, lessWanted: false, given: false },
    confidence: 0.95,
    lostPlants: "leave out",
    unit: "g",
    treatments: [
      mulch("Straw", 4000, against(1 / 3, { low: 0.12, high: 0.9 })),
      mulch("Woodchip", 3100, against(1 / 30, { low: -0.2, high: { absent: "no-upper-limit" } })),
      { ...mulch("Bare soil", 3000, null), isUsual: true },
    ],
    beds: ["1", "2", "Bed C"],
    nothingIn: null,
    idleBeds: [],
    leftOut: [],
    pAllTogether: 0.02,
    unevenness: 0.2,
    df: 3,
    pairs: () => [
      pair("Straw", "Bare soil", 1000, 0.03),
      pair("Straw", "Woodchip", 900, 0.2),
      pair("Woodchip", "Bare soil", 100, 0.9995),
    ],
    sumsOfSquares: () => null,
    quickCautions: () => [{ caution: "C12" }],
    cautions: () => [{ caution: "C12" }],
    ...change,
  };
}

/** The same with every plant on its own, all pairs compared. */
export function mulchesInPairs(): ManyTreatments {
  const letters: Readonly<Record<string, string>> = { Straw: "a", Woodchip: "ab", "Bare soil": "b" };
  const { treatments } = mulches();
  return mulches({
    how: "all pairs",
    usual: null,
    beds: null,
    treatments: treatments.map((one) => ({
      ...one,
      isUsual: false,
      againstUsual: null,
      meanBedsRemoved: null,
      letters: letters[one.name] ?? "",
    })),
  });
}

function mulch(name: (typeof names)[number], mean: number, againstUsual: AgainstUsual | null): TreatmentFound {
  const row = (bed: number) => bed * 3 + names.indexOf(name) + 2;
  return {
    name,
    isUsual: false,
    plants: amounts[name].map((value, bed) => ({
      value,
      bed: ["1", "2", "Bed C"][bed] ?? "",
      place: { argument: "amounts", row: row(bed), column: null, cell: `D${row(bed)}` },
    })),
    lost: name === "Woodchip" ? [{ argument: "amounts", row: 9, column: null, cell: "D9" }] : [],
    notRecorded: [],
    mean,
    meanBedsRemoved: mean,
    againstUsual,
    letters: "",
  };
}

function against(change: number, changeRange: AgainstUsual["changeRange"]): AgainstUsual {
  const differenceRange = { low: -500, high: 2000 };
  return { difference: 0, differenceRange, change, changeRange, pValue: 0.2, rangeVerdict: null, verdict: "few" };
}

function pair(higher: string, lower: string, difference: number, pValue: number) {
  const differenceRange = { low: difference - 800, high: difference + 800 };
  return { higher, lower, difference, differenceRange, pValue, verdict: "open" } as const;
}
