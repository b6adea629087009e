import { allTogether, allTogetherOwnSpread } from "../methods/allTogether";
import { connectedTreatments } from "../methods/connectedTreatments";
import { describe } from "../methods/describe";
import { pooledUnevenness, shareOfMean } from "../methods/unevenness";
import type { ManyTreatments, TreatmentFound } from "../nouns/findings/manyTreatments";
import type { Known } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import type { Problem } from "../nouns/problem";
import { checksDisagree } from "./checksDisagree";
import { valuesOf } from "./harvest";
import { type JointComparison, jointComparison } from "./jointComparison";
import type { ManyAsked } from "./manyAsked";
import { manyCautions } from "./manyCautions";
import type { ManyGroups } from "./manyGroups";
import { lettersFor, pairsFound } from "./pairsFound";
import { sumsOfSquares } from "./sumsOfSquares";

const CONFIDENCE = 0.95;

/** The finding for several treatments as read. */
export function manyTreatments(groups: ManyGroups, asked: ManyAsked): ManyTreatments | Problem {
  const usable = usableIn(groups);
  const apart = unlinked(groups);
  if (apart !== null) return apart;
  const nothingIn = whereNothing(groups, asked, usable);
  const joint = nothingIn === null ? jointComparison(groups, asked, usable) : null;
  const found = {
    finding: "many-treatments" as const,
    how: asked.how,
    usual: groups.names[asked.usual ?? -1] ?? null,
    worthwhile: asked.worthwhile,
    confidence: CONFIDENCE,
    lostPlants: asked.lostPlants,
    unit: groups.sample.unit,
    treatments: treatmentsFound(groups, asked, joint),
    beds: groups.beds,
    nothingIn,
    idleBeds: idleBeds(groups),
    leftOut: groups.leftOut,
    pairs: lazy(() => (joint === null ? [] : pairsFound(groups, joint))),
    sumsOfSquares: lazy(() => (joint === null || asked.how === "own unevenness" ? null : sumsOfSquares(joint.model))),
    ...overall(groups, asked, joint),
  };
  const checks = {
    refit: (rest: ManyGroups) => jointly(rest, asked),
    disagree: () => joint !== null && checksDisagree(groups, joint, asked),
  };
  return {
    quickCautions: lazy(() => manyCautions(found, groups, { joint, checks: null })),
    cautions: lazy(() => manyCautions(found, groups, { joint, checks })),
    ...found,
  };
}

/** The comparison alone; null where there is none. */
function jointly(groups: ManyGroups, asked: ManyAsked): JointComparison | null {
  const usable = usableIn(groups);
  const none = unlinked(groups) !== null || whereNothing(groups, asked, usable) !== null;
  return none ? null : jointComparison(groups, asked, usable);
}

/** The numbers of the treatments that have plants. */
function usableIn({ names, plants }: ManyGroups): readonly number[] {
  const grown = new Set(plants.map(({ treatment }) => treatment));
  return [...names.keys()].filter((at) => grown.has(at));
}

/** Treatments that no bed links with the rest cannot be compared within beds; in beds of their own, beds count once. */
function unlinked({ beds, plants, names }: ManyGroups): Problem | null {
  if (beds === null) return null;
  const linked = connectedTreatments(plants);
  if (linked.length < 2) return null;
  if (linked.every((group) => group.length === 1)) {
    const beds = new Set(plants.map(({ bed }) => bed)).size;
    return { problem: beds === linked.length ? "treatment-is-bed" : "bed-is-unit" };
  }
  const [, ...others] = linked.toSorted((one, other) => other.length - one.length);
  return { problem: "no-shared-bed", apart: others.flat().map((at) => names[at] ?? "") };
}

function whereNothing({ sample, names }: ManyGroups, { usual }: ManyAsked, usable: readonly number[]): string | null {
  if (usual !== null && !usable.includes(usual)) return names[usual] ?? sample.where;
  if (usable.length >= 2) return null;
  return names.find((_, at) => !usable.includes(at)) ?? sample.where;
}

/** A row for every treatment, the highest average first and those without plants last. */
function treatmentsFound(
  groups: ManyGroups,
  asked: ManyAsked,
  joint: JointComparison | null,
): readonly TreatmentFound[] {
  const letters = joint === null || asked.how === "against usual" ? null : lettersFor(joint);
  const rows = groups.names.map((name, at): TreatmentFound => {
    const plants = groups.plants.filter(({ treatment }) => treatment === at);
    const place = joint?.treatments.indexOf(at) ?? -1;
    const adjusted = place < 0 ? { absent: "no-usable-plants" as const } : (joint?.model.means[place] ?? Number.NaN);
    return {
      name,
      isUsual: at === asked.usual,
      plants: plants.map(({ value, place: where, bed }) => ({ value, place: where, bed: groups.beds?.[bed] ?? null })),
      lost: groups.lost.filter(({ treatment }) => treatment === at).map(({ place: where }) => where),
      notRecorded: groups.notRecorded.filter(({ treatment }) => treatment === at).map(({ place: where }) => where),
      mean: describe(valuesOf(plants)).mean,
      meanBedsRemoved: groups.beds === null ? null : adjusted,
      againstUsual: at === asked.usual ? null : (joint?.againstUsual(at) ?? null),
      letters: letters?.get(at) ?? "",
    };
  });
  return rows.toSorted((one, other) => heightOf(other) - heightOf(one));
}

function heightOf({ mean, meanBedsRemoved }: TreatmentFound): number {
  const height = meanBedsRemoved ?? mean;
  return typeof height === "number" ? height : Number.NEGATIVE_INFINITY;
}

/** Beds that hold plants of one treatment only. */
function idleBeds({ beds, plants }: ManyGroups): readonly string[] {
  if (beds === null) return [];
  return beds.filter(
    (_, at) => new Set(plants.filter(({ bed }) => bed === at).map(({ treatment }) => treatment)).size === 1,
  );
}

/** The figures of all treatments together. */
function overall(
  groups: ManyGroups,
  { how }: ManyAsked,
  joint: JointComparison | null,
): Pick<ManyTreatments, "pAllTogether" | "unevenness" | "df"> {
  const none: Known = { absent: "no-usable-plants" };
  if (joint === null) return { pAllTogether: none, unevenness: none, df: none };
  if (joint.untested !== null) return { pAllTogether: joint.untested, unevenness: joint.untested, df: joint.model.df };
  const summaries = joint.treatments.map(
    (at) => describe(valuesOf(groups.plants.filter(({ treatment }) => treatment === at))).summary,
  );
  if (how === "own unevenness") {
    const varied = summaries.every(({ variance }) => variance > 0);
    const whole = varied ? allTogetherOwnSpread(summaries) : null;
    const { unevenness } = pooledUnevenness(summaries);
    const missing: Known = { absent: summaries.some(({ n }) => n < 2) ? "one-plant" : "all-equal" };
    return { pAllTogether: whole?.pValue ?? missing, unevenness, df: whole?.df[1] ?? missing };
  }
  const { model } = joint;
  const unevenness = shareOfMean(Math.sqrt(model.meanSquare), describe(valuesOf(groups.plants)).summary.mean);
  return { pAllTogether: allTogether(model).pValue, unevenness, df: model.df };
}
