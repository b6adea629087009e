import type { Explanation } from "../nouns/explanation";
import type { AgainstUsual, ManyTreatments } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import type { Verdict } from "../nouns/verdict";
import { counted } from "./counted";
import { decisionSentences } from "./decision";
import { mirrored } from "./direction";
import { listText } from "./list";
import { lookOutFor } from "./lookOutFor";
import { manyMethod } from "./manyMethod";
import { tellManyTreatments } from "./manyTreatments";
import { percentText } from "./percent";
import { planSentence } from "./planSentence";
import { pText } from "./pValue";
import { shortLabel } from "./shortLabel";
import { treatmentRanges } from "./treatmentRanges";

/** COMPAREMANY's finding in plain words (METHODS 9.1). */
export function explainManyTreatments(found: ManyTreatments): Explanation {
  const told = tellManyTreatments(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: found.nothingIn === null ? luck(found) : [],
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found),
    workings: workings(found),
  };
}

function compared({ usual, treatments, beds }: ManyTreatments): string {
  const plants = treatments.reduce((sum, one) => sum + one.plants.length, 0);
  const where = beds === null ? "" : ` in ${counted(beds.length, "bed")}`;
  const there = `There were ${counted(plants, "plant")}${where}.`;
  if (usual === null) return `${counted(treatments.length, "treatment")} were set against each other. ${there}`;
  const others = treatments.length - 1;
  return `${counted(others, "treatment")} ${others === 1 ? "was" : "were each"} set against ${shortLabel(usual)}. ${there}`;
}

function luck(found: ManyTreatments): readonly string[] {
  const more = "The more you compare, the more often luck picks a winner. The ranges are wider to allow for that.";
  const shared = "If two share a letter, this trial cannot tell them apart.";
  const lettered = found.treatments.some(({ letters }) => letters !== "");
  return [...treatmentRanges(found), more, ...(lettered ? [shared] : [])];
}

function next(found: ManyTreatments): readonly string[] {
  const { treatments, usual, worthwhile, nothingIn } = found;
  if (nothingIn !== null) return ["It was a demonstration. Say what you saw, and plan a trial."];
  if (usual === null) return ["Name your usual treatment in the formula, and each change is told in percent."];
  const others = treatments.flatMap(({ name, againstUsual }) =>
    againstUsual === null ? [] : [{ name, ...againstUsual }],
  );
  const front = frontRunner(others, worthwhile.lessWanted);
  if (front === undefined) return ["Judge the gaps between them in amounts."];
  if (others.every(({ verdict }) => verdict === "none")) return ["Check the amounts, and ask again."];
  return nextTrial(found, front, shortLabel(usual));
}

/** The front-runner once more; nothing where it is behind (METHODS 9.1 and 2.1). */
function nextTrial(
  { unevenness, beds, worthwhile }: ManyTreatments,
  { name, change, verdict }: FrontRunner,
  usual: string,
): readonly string[] {
  const { lessWanted } = worthwhile;
  if (behind.has(lessWanted ? mirrored(verdict) : verdict)) return decisionSentences("down-enough");
  if (lessWanted ? change >= 0 : change <= 0)
    return [`None came out ${lessWanted ? "lower than" : "ahead of"} ${usual}. Make no change on this evidence.`];
  const plan = {
    change,
    worthwhile,
    unevenness: isKnown(unevenness) ? unevenness : null,
    beds: beds === null ? null : ("one each" as const),
  };
  return [`Try ${shortLabel(name)} against ${usual} once more.`, planSentence(plan)];
}

/** A treatment set against the usual. */
type Compared = AgainstUsual & { readonly name: string };

type FrontRunner = Compared & { readonly change: number };

/** The one that changed most the way the grower wants, or least the other way; undefined where no change is known. */
function frontRunner(compared: readonly Compared[], lessWanted: boolean): FrontRunner | undefined {
  const known = compared.flatMap((one) => (isKnown(one.change) ? [{ ...one, change: one.change }] : []));
  return known.sort((one, other) => (lessWanted ? one.change - other.change : other.change - one.change))[0];
}

const behind: ReadonlySet<Verdict> = new Set<Verdict>(["down-enough", "down-small", "down-unclear"]);

function workings(found: ManyTreatments): readonly string[] {
  const { pAllTogether, unevenness, idleBeds, worthwhile } = found;
  const given = worthwhile.given ? [] : [`Worthwhile is taken as ${percentText(worthwhile.size)}.`];
  return [
    `${manyMethod(found)}.`,
    ...(isKnown(pAllTogether) ? [`p, all together (how surprising if nothing differed): ${pText(pAllTogether)}.`] : []),
    ...(isKnown(unevenness) ? [`Plants treated alike differed by ${percentText(unevenness)}.`] : []),
    ...(idleBeds.length === 0
      ? []
      : [`These beds hold one treatment and tell nothing: ${listText(idleBeds.map(shortLabel))}.`]),
    ...given,
  ];
}
