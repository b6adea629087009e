import type { Caution } from "../../src/nouns/caution";
import type { DrawnLots } from "../../src/nouns/findings/drawnLots";
import type { PerPlant } from "../../src/nouns/findings/perPlant";
import type { ChanceToSee, PlantsNeeded, SmallestChange } from "../../src/nouns/findings/planning";
import type { Group, LabelSwap, TwoTreatments } from "../../src/nouns/findings/twoTreatments";
import type { TreatmentUnevenness, Unevenness } from "../../src/nouns/findings/unevenness";
import type { UpDown } from "../../src/nouns/findings/upDown";
import type { Known } from "../../src/nouns/known";
import type { Place } from "../../src/nouns/place";

/** A cell of a sheet as a place in `usual`. */
export function cell(name: string): Place {
  return { argument: "usual", row: Number(name.replace(/\D/g, "")), column: null, cell: name };
}

/** A row of an argument whose address is not known. */
export function row(argument: string, number: number): Place {
  return { argument, row: number, column: null, cell: null };
}

/** The facts of a group that words look at; the plants stand for their number only. */
export interface GroupFacts {
  readonly name: string | null;
  readonly plants: number;
  readonly mean: Group["mean"];
  readonly unevenness: Group["unevenness"];
  readonly lost?: readonly Place[];
  readonly notRecorded?: readonly Place[];
}

export function group(role: "usual" | "new", facts: GroupFacts): Group {
  const { plants, lost = [], notRecorded = [], mean, unevenness, name } = facts;
  const known = typeof mean === "number" && typeof unevenness === "number";
  return {
    role,
    name,
    plants: Array.from({ length: plants }, (_, at) => ({ value: 0, place: row(role, at + 1) })),
    lost,
    notRecorded,
    mean,
    deviation: known ? mean * unevenness : { absent: "one-plant" },
    unevenness,
  };
}

/** The place-and-season caution that every comparison carries. */
export const placeAndSeason: Caution = { caution: "C12" };

/** A comparison of two treatments; what a case does not say is the ordinary: separate plants, 10 % worthwhile, 95 %. */
export function twoTreatments(
  facts: Pick<
    TwoTreatments,
    "usual" | "tried" | "verdict" | "change" | "changeRange" | "difference" | "differenceRange" | "pValue"
  > &
    Partial<Omit<TwoTreatments, "labelSwap" | "cautions">> & {
      readonly swap: LabelSwap | null;
      readonly cautions?: readonly Caution[];
    },
): TwoTreatments {
  const { swap, cautions = [placeAndSeason], ...rest } = facts;
  return {
    finding: "two-treatments",
    how: "separate",
    asked: rest.how ?? "separate",
    lostPlants: "leave out",
    worthwhile: { size: 0.1, lessWanted: false, given: false },
    confidence: 0.95,
    unit: null,
    pairs: null,
    rangeVerdict: null,
    nothingIn: null,
    timesAsMuch: typeof facts.change === "number" ? facts.change + 1 : facts.change,
    t: 2,
    df: 10,
    lossP: () => ({ absent: "no-losses" }),
    onePlantDecides: () => null,
    ...rest,
    labelSwap: () => swap,
    cautions: () => cautions,
  };
}

export function exactSwap(p: number, tried: number): LabelSwap {
  return { p, hits: Math.round(p * tried), tried, exact: true };
}

export function upDown(
  facts: Partial<Omit<UpDown, "cautions">> & Pick<UpDown, "usualMean" | "triedMean">,
  cautions: readonly Caution[] = [placeAndSeason],
): UpDown {
  const change = facts.triedMean / facts.usualMean - 1;
  const noRange = { absent: "single-figures" } as const;
  return {
    finding: "up-down",
    names: { usual: null, tried: null },
    unit: null,
    single: true,
    confidence: 0.95,
    usualPlants: 1,
    triedPlants: 1,
    change,
    changeRange: { low: noRange, high: noRange },
    timesAsMuch: change + 1,
    ...facts,
    cautions: () => cautions,
  };
}

export function perPlant(
  facts: Partial<Omit<PerPlant, "cautions">>,
  cautions: readonly Caution[] = [placeAndSeason],
): PerPlant {
  return {
    finding: "per-plant",
    name: null,
    unit: null,
    rule: "leave out",
    fromTotal: false,
    perPlant: 0,
    setOut: 0,
    lost: 0,
    notRecorded: 0,
    counted: 0,
    total: 0,
    perSurvivingPlant: 0,
    perPlantSetOut: 0,
    ...facts,
    cautions: () => cautions,
  };
}

export function oneUnevenness(
  facts: Partial<TreatmentUnevenness> & Pick<TreatmentUnevenness, "plants" | "unevenness">,
): TreatmentUnevenness {
  const none = { absent: "one-plant-only" } as const;
  return {
    name: null,
    mean: 1,
    deviation: 1,
    range: { low: none, high: none },
    median: 1,
    lowest: 1,
    highest: 1,
    odd: [],
    ...facts,
  };
}

export function unevenness(
  facts: Pick<Unevenness, "all" | "treatments"> & Partial<Omit<Unevenness, "cautions">>,
  cautions: readonly Caution[] = [placeAndSeason],
): Unevenness {
  return { finding: "unevenness", withinBeds: false, unit: null, leftOut: [], ...facts, cautions: () => cautions };
}

const separate = { unevenness: 0.35, unevennessGiven: true, treatments: 2, beds: null } as const;
const tenPercent = { size: 0.1, lessWanted: false, given: false } as const;

/** A plan's chances, as figures. */
interface PlannedChances {
  readonly chanceToSee: Known;
  readonly chanceEnough: Known;
}

export function plantsNeeded(
  {
    chanceToSee,
    chanceEnough,
    ...facts
  }: PlannedChances &
    Pick<PlantsNeeded, "change" | "needed" | "setOut" | "inAll" | "smallestWithHalf"> &
    Partial<Omit<PlantsNeeded, "cautions" | keyof PlannedChances>>,
  cautions: readonly Caution[] = [],
): PlantsNeeded {
  return {
    finding: "plants-needed",
    ...separate,
    chance: 0.8,
    losses: 0.1,
    worthwhile: tenPercent,
    ...facts,
    chanceToSee: () => chanceToSee,
    chanceEnough: () => chanceEnough,
    cautions: () => cautions,
  };
}

export function smallestChange(
  facts: Pick<SmallestChange, "plantsEach" | "change"> & Partial<Omit<SmallestChange, "cautions">>,
  cautions: readonly Caution[] = [],
): SmallestChange {
  return {
    finding: "smallest-change",
    ...separate,
    chance: 0.8,
    direction: "more",
    ...facts,
    cautions: () => cautions,
  };
}

export function chanceToSee(
  facts: Pick<ChanceToSee, "change" | "plantsEach" | "chanceToSee" | "chanceEnough"> &
    Partial<Omit<ChanceToSee, "cautions">>,
  cautions: readonly Caution[] = [],
): ChanceToSee {
  return { finding: "chance-to-see", ...separate, worthwhile: tenPercent, ...facts, cautions: () => cautions };
}

/** A plan drawn by lot; its words look at no spot. */
export function drawnLots(
  facts: Pick<DrawnLots, "treatments" | "plantsEach" | "beds"> & Partial<Pick<DrawnLots, "drawNumber">>,
  cautions: readonly Caution[] = [placeAndSeason],
): DrawnLots {
  return { finding: "drawn-lots", drawNumber: 1431, spots: [], ...facts, cautions: () => cautions };
}
