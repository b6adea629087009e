import { isHintOnly, type VerdictBasis } from "../methods/verdict";
import type { Caution, Loss } from "../nouns/caution";
import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import type { Place } from "../nouns/place";
import { isBarelyFound, isWide } from "./barelyFound";
import { fewPairs, fewPlants } from "./fewPlants";
import { basisOf, type JointComparison } from "./jointComparison";
import { littleUsual } from "./littleUsual";
import { isStrongLoss } from "./lossCautions";
import type { ManyGroups } from "./manyGroups";
import { oddPlaces } from "./oddPlaces";
import { readingCautions } from "./readingCautions";

type Found = Omit<ManyTreatments, "cautions" | "quickCautions">;
/** Makes the same comparison of other plants; null where it cannot be made. */
type Refit = (groups: ManyGroups) => Pick<JointComparison, "isBelow"> | null;

/** Checks that take refits and swaps, too long for a keystroke. */
interface LongChecks {
  readonly refit: Refit;
  /** Whether the label swap and the test disagree on a close comparison. */
  readonly disagree: () => boolean;
}

/** The comparisons made, null where there are none, and the long checks, null where they are to be left out (C21, C22). */
interface Compared {
  readonly joint: JointComparison | null;
  readonly checks: LongChecks | null;
}

/** What to look out for in a comparison of several treatments (METHODS 9.2). */
export function manyCautions(found: Found, groups: ManyGroups, { joint, checks }: Compared): readonly Caution[] {
  const odd = found.treatments.flatMap(({ plants }) => oddPlaces(plants));
  const decides = checks === null ? null : onePlant(found, groups, checks.refit);
  const alike = !isKnown(found.pAllTogether) && found.pAllTogether.absent === "all-equal";
  return [
    ...(joint === null ? [] : fewOnes(groups, joint)),
    ...littleUsual(found.treatments.find(({ isUsual }) => isUsual)?.plants.map(({ value }) => value) ?? [], null),
    ...(decides === null ? [] : [{ caution: "C21", place: decides } as const]),
    ...(alike ? [{ caution: "C17" } as const] : []),
    ...lostOnes(found),
    ...(odd.length > 0 ? [{ caution: "C06", places: odd } as const] : []),
    ...(checks?.disagree() ? [{ caution: "C22" } as const] : []),
    ...(found.treatments.some(isLikelyTooBig) ? [{ caution: "C30" } as const] : []),
    ...readingCautions([groups.sample]),
    { caution: "C12" },
  ];
}

/** C01 for the comparison that rests on the fewest plants, by the rule that caps its verdict: a bed holds a pair. */
function fewOnes(groups: ManyGroups, joint: JointComparison): readonly Caution[] {
  const bases = joint.duos.map((duo) => basisOf(groups, joint.treatments, duo)).filter(isHintOnly);
  const [fewest] = bases
    .map(numbersIn)
    .toSorted((one, other) => Math.min(...one) - Math.min(...other) || Math.max(...one) - Math.max(...other));
  if (fewest === undefined) return [];
  return [groups.beds === null ? fewPlants(...fewest) : fewPairs(fewest[0])];
}

/** The plants, or the pairs, that a comparison rests on. */
function numbersIn(basis: VerdictBasis): readonly [usual: number, tried: number] {
  return "pairs" in basis ? [basis.pairs, basis.pairs] : [basis.usual, basis.tried];
}

function lostOnes({ treatments, lostPlants }: Found): readonly Caution[] {
  const losses = treatments
    .filter(({ lost }) => lost.length > 0)
    .map(({ name, isUsual, lost, plants, notRecorded }): Loss => {
      const counted = lostPlants === "count as zero" ? plants.length - lost.length : plants.length;
      const setOut = counted + lost.length + notRecorded.length;
      return { name, role: isUsual ? "usual" : "new", lost: lost.length, setOut };
    });
  if (losses.length === 0) return [];
  const none = { absent: "no-usable-plants" } as const;
  const strong = isStrongLoss(losses);
  const countedAsZero = lostPlants === "count as zero";
  return [{ caution: "C03", losses, change: none, changeLostAsZero: none, strong, countedAsZero }, { caution: "C04" }];
}

/** A difference only just found, with a range wider than 100 points (C30). */
function isLikelyTooBig({ againstUsual }: Found["treatments"][number]): boolean {
  return againstUsual !== null && isBarelyFound(againstUsual) && isWide(againstUsual.changeRange);
}

function isDirected(verdict: string | null): boolean {
  return verdict !== null && /^(up|down)/.test(verdict);
}

/** Without this plant, p is far from the bar of 5 % and not only beyond it. */
const FAR = 0.15;

/** The plant without which a treatment's verdict up or down is lost by far (C21): the first in sheet order. */
function onePlant(found: Found, groups: ManyGroups, refit: Refit): Place | null {
  const directed = found.treatments
    .filter(({ againstUsual }) => isDirected(againstUsual?.rangeVerdict ?? null))
    .map(({ name }) => groups.names.indexOf(name));
  if (directed.length === 0) return null;
  const decides = groups.plants.find((_, at) => {
    const rest = refit({ ...groups, plants: groups.plants.filter((_plant, other) => other !== at) });
    return rest !== null && directed.some((treatment) => rest.isBelow(treatment, FAR) === false);
  });
  return decides?.place ?? null;
}
