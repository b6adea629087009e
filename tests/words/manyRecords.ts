import type { AgainstUsual, ManyTreatments, PairFound, TreatmentFound } from "../../src/nouns/findings/manyTreatments";
import type { Known } from "../../src/nouns/known";
import { placeAndSeason, row } from "./records";

/** The facts of one treatment that words look at; the plants stand for their number only. */
export interface TreatmentFacts {
  readonly name: string;
  readonly plants: number;
  readonly mean: number;
  readonly bedsRemoved?: number;
  readonly againstUsual?: AgainstUsual;
  readonly letters?: string;
}

export function treatment({
  name,
  plants,
  mean,
  bedsRemoved,
  againstUsual,
  letters = "",
}: TreatmentFacts): TreatmentFound {
  return {
    name,
    isUsual: false,
    plants: Array.from({ length: plants }, (_, at) => ({ value: 0, place: row("amounts", at + 1), bed: null })),
    lost: [],
    notRecorded: [],
    mean: plants === 0 ? { absent: "no-usable-plants" } : mean,
    meanBedsRemoved: bedsRemoved ?? null,
    againstUsual: againstUsual ?? null,
    letters,
  };
}

export function against(
  facts: Pick<AgainstUsual, "change" | "changeRange" | "verdict"> & { readonly pValue?: Known },
): AgainstUsual {
  const differenceRange = { low: 0, high: 0 };
  return { difference: 0, differenceRange, rangeVerdict: null, pValue: 0.5, ...facts };
}

export function pair(higher: string, lower: string, pValue: number): PairFound {
  const differenceRange = { low: 0, high: 0 };
  return { higher, lower, difference: 1, differenceRange, pValue, verdict: "open" };
}

export function manyTreatments(
  facts: Pick<ManyTreatments, "treatments" | "usual"> &
    Partial<Omit<ManyTreatments, "pairs" | "cautions" | "quickCautions">> & { readonly pairs?: readonly PairFound[] },
): ManyTreatments {
  const { pairs = [], ...rest } = facts;
  return {
    finding: "many-treatments",
    how: rest.usual === null ? "all pairs" : "against usual",
    worthwhile: { size: 0.1, lessWanted: false, given: false },
    confidence: 0.95,
    lostPlants: "leave out",
    unit: null,
    beds: null,
    nothingIn: null,
    idleBeds: [],
    leftOut: [],
    pAllTogether: 0.05,
    unevenness: 0.35,
    df: 20,
    sumsOfSquares: () => null,
    ...rest,
    pairs: () => pairs,
    quickCautions: () => [placeAndSeason],
    cautions: () => [placeAndSeason],
  };
}
