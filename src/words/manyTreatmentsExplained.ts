import type { Explanation } from "../nouns/explanation";
import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import { isKnown } from "../nouns/known";
import { counted } from "./counted";
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
  const { treatments, usual, unevenness, beds, worthwhile, nothingIn } = found;
  if (nothingIn !== null) return ["It was a demonstration. Say what you saw, and plan a trial."];
  if (usual === null) return ["Name your usual treatment in the formula, and each change is told in percent."];
  const compared = treatments.flatMap(({ againstUsual }) => againstUsual ?? []);
  if (!compared.some(({ change }) => isKnown(change))) return ["Judge the gaps between them in amounts."];
  if (compared.every(({ verdict }) => verdict === "none")) return ["Check the amounts, and ask again."];
  const front = frontRunner(found);
  const name = shortLabel(usual);
  if (front === null)
    return [
      `None came out ${worthwhile.lessWanted ? "lower than" : "ahead of"} ${name}. Make no change on this evidence.`,
    ];
  const plan = {
    change: front.change,
    worthwhile,
    unevenness: isKnown(unevenness) ? unevenness : null,
    beds: beds === null ? null : ("one each" as const),
  };
  return [`Try ${shortLabel(front.name)} against ${name} once more.`, planSentence(plan)];
}

/** The treatment that changed most the way the grower wants; null where none did. */
function frontRunner({
  treatments,
  worthwhile,
}: ManyTreatments): { readonly name: string; readonly change: number } | null {
  const sign = worthwhile.lessWanted ? -1 : 1;
  const changes = treatments.flatMap(({ name, againstUsual }) => {
    const change = againstUsual?.change;
    return change !== undefined && isKnown(change) && sign * change > 0 ? [{ name, change }] : [];
  });
  const [front = null] = changes.sort((one, other) => sign * (other.change - one.change));
  return front;
}

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
