import type { Explanation } from "../nouns/explanation";
import type { ManyTreatments } from "../nouns/findings/manyTreatments";
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
import { planCall } from "./planCall";
import { pText } from "./pValue";
import { sentenceStart } from "./sentenceStart";
import { shortLabel } from "./shortLabel";
import { treatmentRange } from "./treatmentRange";

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

function luck({ treatments, usual }: ManyTreatments): readonly string[] {
  const ranges = treatments.flatMap(({ name, againstUsual }) =>
    againstUsual === null || !isKnown(againstUsual.pValue)
      ? []
      : [`${sentenceStart(shortLabel(name))}: the true change may be ${treatmentRange(againstUsual)}.`],
  );
  const more = "The more you compare, the more often luck picks a winner. The ranges are wider to allow for that.";
  const shared = "If two share a letter, this trial cannot tell them apart.";
  return usual === null ? [more, shared] : [...ranges, more];
}

/** The front-runner once more, unless it is shown to be behind (METHODS 9.1 and 2.1). */
function next({ treatments, usual, unevenness, beds, worthwhile }: ManyTreatments): readonly string[] {
  const sign = worthwhile.lessWanted ? -1 : 1;
  const others = treatments.filter(({ isUsual }) => !isUsual);
  const front = worthwhile.lessWanted ? others.at(-1) : others[0];
  if (front === undefined || usual === null || !isKnown(unevenness)) return [];
  const { change, verdict } = front.againstUsual ?? { change: null, verdict: "none" };
  if (behind.has(worthwhile.lessWanted ? mirrored(verdict) : verdict)) return decisionSentences("down-enough");
  const again = `Try ${shortLabel(front.name)} against ${shortLabel(usual)} once more.`;
  if (change === null || !isKnown(change) || unevenness <= 0) return [again];
  const half = (sign * (worthwhile.size + Math.max(worthwhile.size, sign * change))) / 2;
  const plan = { change: half, unevenness, treatments: 2, beds: beds === null ? null : ("one each" as const) };
  return [again, `To plan it, type ${planCall(plan)}.`];
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
