import { compareMeans, type Layout, type MeansCompared } from "../methods/compareMeans";
import { describe } from "../methods/describe";
import { differences } from "../methods/differences";
import { labelSwap } from "../methods/labelSwap";
import { lossTest } from "../methods/lossTest";
import { rankSum } from "../methods/rankSum";
import { signedRank } from "../methods/signedRank";
import { signFlip } from "../methods/signFlip";
import { cappedVerdict } from "../methods/verdict";
import type { Group, HowTwo, LabelSwap, TwoTreatments } from "../nouns/findings/twoTreatments";
import { isKnown } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import type { LostPlants } from "../nouns/lostPlants";
import type { Plant, Sample } from "../nouns/sample";
import type { Worthwhile } from "../nouns/verdict";
import { valuesOf } from "./harvest";
import { onePlantDecides } from "./onePlantDecides";
import { emptyRange, isPaired, type TwoGroups } from "./readTwoGroups";
import { twoTreatmentCautions } from "./twoTreatmentCautions";
import { verdictOfRange } from "./verdictOfRange";

/** The options of a comparison of two treatments, as typed or by default. */
export interface TwoTreatmentsAsked {
  readonly how: HowTwo;
  readonly asked: TwoTreatments["asked"];
  readonly worthwhile: Worthwhile;
  readonly confidence: number;
  readonly lostPlants: LostPlants;
}

/** The finding for two treatments as read. */
export function twoTreatments(groups: TwoGroups, options: TwoTreatmentsAsked): TwoTreatments {
  const { usualPlants, triedPlants, pairs } = groups;
  const nothingIn = emptyRange(groups, options.lostPlants);
  const [before, after] = [valuesOf(usualPlants), valuesOf(triedPlants)];
  const layout = layoutOf(options.how);
  const compared =
    nothingIn === null ? compareMeans(before, after, { layout, confidence: options.confidence }) : NOTHING;
  const range = verdictOfRange(compared, options.worthwhile.size);
  const basis = pairs === null ? { usual: before.length, tried: after.length } : { pairs: pairs.complete };
  const ranks = nothingIn === null ? rankFigures(options.how, before, after) : {};
  const { g, standardError, usualMean, triedMean, ...figures } = compared;
  const decides = lazy(() => onePlantDecides(groups, { layout, confidence: options.confidence }));
  const found = {
    finding: "two-treatments" as const,
    usual: group("usual", groups.usual, usualPlants),
    tried: group("new", groups.tried, triedPlants),
    unit: groups.usual.unit ?? groups.tried.unit,
    pairs,
    nothingIn,
    rangeVerdict: typeof range === "string" ? range : null,
    verdict: cappedVerdict(range, basis),
    timesAsMuch: isKnown(compared.change) ? triedMean / usualMean : compared.change,
    labelSwap: lazy(() => (nothingIn === null ? swapLabels(layout, before, after) : null)),
    lossP: lazy(() => lossTest(lostAndKept(groups.usual), lostAndKept(groups.tried))),
    onePlantDecides: () => decides()?.place ?? null,
    ...options,
    ...figures,
    ...ranks,
  };
  return { cautions: lazy(() => twoTreatmentCautions(found, groups, { decides, ...compared })), ...found };
}

const NO_PLANTS = { absent: "no-usable-plants" } as const;
const NOTHING: MeansCompared = {
  usualMean: Number.NaN,
  triedMean: Number.NaN,
  difference: NO_PLANTS,
  differenceRange: { low: NO_PLANTS, high: NO_PLANTS },
  change: NO_PLANTS,
  changeRange: { low: NO_PLANTS, high: NO_PLANTS },
  t: NO_PLANTS,
  df: NO_PLANTS,
  pValue: NO_PLANTS,
  standardError: NO_PLANTS,
  g: null,
};

function layoutOf(how: HowTwo): Layout {
  if (isPaired(how)) return "pairs";
  return how === "equal unevenness" ? how : "separate";
}

/** A rank test's own figures in place of the t test's. */
function rankFigures(
  how: HowTwo,
  usual: readonly number[],
  tried: readonly number[],
): Partial<Pick<TwoTreatments, "t" | "df" | "pValue">> {
  if (how !== "ranks" && how !== "pairs ranks") return {};
  const { statistic, pValue } = (how === "ranks" ? rankSum : signedRank)(usual, tried);
  return { t: statistic, df: { absent: "no-degrees-of-freedom" }, pValue };
}

function group(role: Group["role"], { name, entries }: Sample, plants: readonly Plant[]): Group {
  const { mean, deviation, unevenness } = describe(valuesOf(plants));
  const alone = { absent: "one-plant" } as const;
  return {
    role,
    name,
    plants,
    lost: entries.filter(({ kind }) => kind === "lost").map(({ place }) => place),
    notRecorded: entries.filter(({ kind }) => kind === "not-recorded").map(({ place }) => place),
    mean,
    deviation: plants.length === 1 ? alone : deviation,
    unevenness: plants.length === 1 ? alone : unevenness,
  };
}

function swapLabels(layout: Layout, usual: readonly number[], tried: readonly number[]): LabelSwap {
  return layout === "pairs" ? signFlip(differences(usual, tried)) : labelSwap(usual, tried);
}

function lostAndKept({ entries }: Sample): { readonly lost: number; readonly kept: number } {
  const count = (kind: Sample["entries"][number]["kind"]) => entries.filter((entry) => entry.kind === kind).length;
  return { lost: count("lost"), kept: count("value") };
}
