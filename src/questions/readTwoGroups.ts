import type { HowTwo } from "../nouns/findings/twoTreatments";
import type { LostPlants } from "../nouns/lostPlants";
import { isProblem, type Problem } from "../nouns/problem";
import type { Plant, Sample } from "../nouns/sample";
import { missing } from "../ranges/option";
import { readPairs } from "../ranges/readPairs";
import { type Negatives, readSample } from "../ranges/readSample";
import { sameUnit } from "../ranges/sameUnit";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { isBlank } from "./isBlank";
import { plantOf, usablePlants } from "./usablePlants";

/** Two treatments' plants as they enter a comparison; with pairs, index by index. */
export interface TwoGroups {
  readonly usual: Sample;
  readonly tried: Sample;
  readonly usualPlants: readonly Plant[];
  readonly triedPlants: readonly Plant[];
  readonly pairs: { readonly complete: number; readonly incomplete: number } | null;
}

/** How the plants are to be taken. */
export interface GroupsRule {
  readonly how: HowTwo;
  readonly lostPlants: LostPlants;
  /** A harvest cannot be below zero; any other measurement may, which is also taken when this is left out. */
  readonly negatives?: Negatives;
}

/** Whether plants are compared pair by pair. */
export function isPaired(how: HowTwo): boolean {
  return how === "pairs" || how === "pairs ranks";
}

/** Reads the two ranges of a comparison. */
export function readTwoGroups({ usual, new: tried }: Given, rule: GroupsRule): TwoGroups | Problem {
  const { negatives = "keep" } = rule;
  if (!usual) return missing("usual");
  if (!tried) return missing("new");
  const samples = isPaired(rule.how)
    ? readPairs(usual, tried, negatives)
    : allRead({ usual: readSample(usual, negatives), tried: readSample(tried, negatives) });
  if (isProblem(samples)) return samples;
  const unlike = sameUnit(samples.usual, samples.tried);
  if (unlike !== null) return unlike;
  return isPaired(rule.how) ? pairedGroups(samples, rule.lostPlants) : separateGroups(samples, rule.lostPlants);
}

/** The same two treatments with lost plants counted as zero. */
export function withLostAsZero(groups: TwoGroups): TwoGroups {
  return groups.pairs === null ? separateGroups(groups, "count as zero") : pairedGroups(groups, "count as zero");
}

/** Where no plant counts; with pairs that all lack a partner, the new range. Null when there is something to compare. */
export function emptyRange({ usual, tried, usualPlants, triedPlants }: TwoGroups, rule: LostPlants): string | null {
  if (usualPlants.length > 0 && triedPlants.length > 0) return null;
  return usablePlants(usual, rule).length === 0 ? usual.where : tried.where;
}

type Samples = Pick<TwoGroups, "usual" | "tried">;

function separateGroups({ usual, tried }: Samples, rule: LostPlants): TwoGroups {
  const [usualPlants, triedPlants] = [usablePlants(usual, rule), usablePlants(tried, rule)];
  return { usual, tried, usualPlants, triedPlants, pairs: null };
}

/** Keeps the pairs in which both plants count; a row empty on both sides is no pair. */
function pairedGroups({ usual, tried }: Samples, rule: LostPlants): TwoGroups {
  const complete: [Plant, Plant][] = [];
  let incomplete = 0;
  for (const [row, entry] of usual.entries.entries()) {
    const other = tried.entries[row];
    const [left, right] = [plantOf(entry, rule), other === undefined ? null : plantOf(other, rule)];
    if (left !== null && right !== null) complete.push([left, right]);
    else if (!isBlank(entry) || (other !== undefined && !isBlank(other))) incomplete += 1;
  }
  return {
    usual,
    tried,
    usualPlants: complete.map(([left]) => left),
    triedPlants: complete.map(([, right]) => right),
    pairs: { complete: complete.length, incomplete },
  };
}
