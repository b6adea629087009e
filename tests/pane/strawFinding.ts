import type { Group, TwoTreatments } from "../../src/nouns/findings/twoTreatments";

/** A comparison written down by hand: what the pane draws must be exactly what stands here. */
export function strawFinding(change: Partial<TwoTreatments> = {}): TwoTreatments {
  return {
    finding: "two-treatments",
    how: "separate",
    asked: "separate",
    lostPlants: "leave out",
    worthwhile: { size: 0.1, lessWanted: false, given: false },
    confidence: 0.95,
    usual: group("usual", "Bare soil", [2000, 3000, 4000]),
    tried: group("new", "Straw", [3000, 5000, 4000]),
    unit: "g",
    pairs: null,
    verdict: "few",
    rangeVerdict: "open",
    nothingIn: null,
    difference: 1000,
    differenceRange: { low: -1267, high: 3267 },
    change: 1 / 3,
    changeRange: { low: -0.3, high: 2 },
    timesAsMuch: 4 / 3,
    t: 1.2,
    df: 4,
    pValue: 0.29,
    labelSwap: () => null,
    lossP: () => ({ absent: "no-losses" }),
    onePlantDecides: () => null,
    cautions: () => [{ caution: "C12" }],
    ...change,
  };
}

/** A treatment whose plants stand one below the other under a heading: in column B the usual, in C the new. */
export function group(role: Group["role"], name: string | null, values: readonly number[]): Group {
  const column = role === "usual" ? "B" : "C";
  return {
    role,
    name,
    plants: values.map((value, at) => ({
      value,
      place: { argument: role, row: at + 2, column: null, cell: `${column}${at + 2}` },
    })),
    lost: [],
    notRecorded: [],
    mean: values.reduce((sum, value) => sum + value, 0) / values.length,
    deviation: 1000,
    unevenness: 0.3,
  };
}
