import type { Caution, Loss } from "../nouns/caution";
import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import type { Place } from "../nouns/place";
import { isBarelyFound, isWide } from "./barelyFound";
import { fewPlants } from "./fewPlants";
import type { JointComparison } from "./jointComparison";
import { littleUsual } from "./littleUsual";
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

const ENOUGH = 4;
const STRONG_LOSS = 0.2;

/**
 * What to look out for in a comparison of several treatments (METHODS 9.2).
 *
 * @param checks null leaves out the cautions that need them (C21, C22)
 */
export function manyCautions(found: Found, groups: ManyGroups, checks: LongChecks | null): readonly Caution[] {
  const odd = found.treatments.flatMap(({ plants }) => oddPlaces(plants));
  const decides = checks === null ? null : onePlant(found, groups, checks.refit);
  const alike = !isKnown(found.pAllTogether) && found.pAllTogether.absent === "all-equal";
  return [
    ...fewOnes(found),
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

/** C01 for the treatment with the fewest plants beside the usual, or the two with the fewest. */
function fewOnes({ treatments, nothingIn }: Found): readonly Caution[] {
  if (nothingIn !== null) return [];
  const fewest = treatments
    .map(({ plants }) => plants.length)
    .filter((plants) => plants > 0)
    .sort((a, b) => a - b);
  const [few = 0, next = 0] = fewest;
  const usual = treatments.find(({ isUsual }) => isUsual)?.plants.length ?? next;
  return few < ENOUGH ? [fewPlants(usual, few === usual ? next : few)] : [];
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
  const strong = losses.some(({ lost, setOut }) => lost / setOut >= STRONG_LOSS);
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
