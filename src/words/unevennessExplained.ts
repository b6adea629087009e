import type { Explanation } from "../nouns/explanation";
import type { TreatmentUnevenness, Unevenness } from "../nouns/findings/unevenness";
import { isKnown } from "../nouns/known";
import { absenceText } from "./absence";
import { counted } from "./counted";
import { listText } from "./list";
import { lookOutFor } from "./lookOutFor";
import { percentText } from "./percent";
import { placeText } from "./place";
import { planCall } from "./planCall";
import { shortLabel } from "./shortLabel";
import { rangeText, tellUnevenness } from "./unevenness";

/** UNEVENNESS's finding in plain words (METHODS 9.1). */
export function explainUnevenness(found: Unevenness): Explanation {
  const told = tellUnevenness(found);
  return {
    finding: told.finding(),
    say: told.say(),
    compared: compared(found),
    luck: luck(found.all),
    lookOutFor: lookOutFor(found.cautions()),
    next: next(found.all),
    workings: workings(found),
  };
}

function compared({ treatments, all, withinBeds }: Unevenness): string {
  const plants = counted(all.plants, "plant");
  const beds = withinBeds ? " and beds" : "";
  if (treatments.length > 1) {
    const inAll = `${plants} in ${counted(treatments.length, "treatment")}`;
    return `${inAll}. Differences between treatments${beds} are taken out.`;
  }
  const name = shortLabel(treatments[0]?.name ?? "");
  const alike = `${plants}${name === "" ? "" : ` of ${name}`}${all.plants > 1 ? ", all treated alike" : ""}.`;
  return withinBeds ? `${alike} Differences between beds are taken out.` : alike;
}

function luck(all: TreatmentUnevenness): readonly string[] {
  return rangeText(all) === null ? [] : ["About 1 such range in 5 misses the true figure."];
}

function next({ range }: TreatmentUnevenness): readonly string[] {
  const { high } = range;
  if (!isKnown(high) || high <= 0) return [];
  const call = planCall({ change: 0.3, unevenness: high, treatments: 2, beds: null });
  return [`Use ${percentText(high)} when planning.`, `To plan for a change of 30 %, type ${call}.`];
}

function workings({ treatments, leftOut }: Unevenness): readonly string[] {
  const each = treatments.length > 1 ? [`${treatments.map(treatmentText).join("; ")}.`] : [];
  return [
    "Unevenness tells how far plants lie from the average. It is the standard deviation as a share of it.",
    ...each,
    leftOutSentence(leftOut.map(placeText)),
  ].filter((text) => text !== "");
}

function treatmentText({ name, plants, unevenness }: TreatmentUnevenness, at: number): string {
  const label = shortLabel(name ?? "");
  const figure = isKnown(unevenness) ? percentText(unevenness) : absenceText(unevenness);
  return `${label === "" ? `treatment ${at + 1}` : label}: ${figure} (${counted(plants, "plant")})`;
}

function leftOutSentence(places: readonly string[]): string {
  if (places.length === 0) return "";
  const where = places.length > 5 ? "" : ` (${listText(places)})`;
  return `${counted(places.length, "row")} without a treatment or bed left out${where}.`;
}
