import { luckyLead } from "../../numerics/luckyLead";
import { luckLesson } from "../../words/luckLesson";
import { choice, field } from "../dom/blocks";
import { element } from "../dom/element";
import { fieldNumber } from "../plan/fieldNumber";
import type { Lesson } from "./luckSheet";

/** What a class is to be shown. */
export interface LuckForm {
  readonly root: HTMLElement;
  /** The lesson as filled in; a sentence says what is missing. */
  readonly given: () => Lesson | string;
}

/** Keeps averages below zero out of reach (see luckyLead). */
const limits = {
  each: { start: 4, low: 3, high: 20 },
  unevenness: { start: 25, low: 5, high: 40 },
  lead: { start: 30, low: 1, high: 200 },
};

const weights = [
  { value: "own", text: "The class weighs its own" },
  { value: "invented", text: "Invented, to show it today" },
];

/** With it the practice sheet's plants show a wide lead at once. */
const firstDraw = 18;

/** The fields for a lesson, filled in for a common trial. */
export function luckForm(): LuckForm {
  const each = fieldNumber("Plants in each team", limits.each);
  const unevenness = fieldNumber("They differ by, in %", limits.unevenness);
  const lead = fieldNumber("A lead that impresses, in %", limits.lead);
  const weighed = choice(weights);
  const root = element("div", { class: "fields" }, each.root, unevenness.root, lead.root, field("Weights", weighed));
  return { root, given };

  function given(): Lesson | string {
    const [plants, uneven, ahead] = [each.value(), unevenness.value(), lead.value()];
    if (plants === null) return each.asks;
    if (uneven === null) return unevenness.asks;
    if (ahead === null) return lead.asks;
    const shares = { unevenness: uneven / 100, lead: ahead / 100 };
    const chance = luckyLead({ each: plants, unevenness: shares.unevenness }, shares.lead);
    const says = luckLesson({ ...shares, chance });
    return { each: plants, ...shares, drawNumber: firstDraw, invented: weighed.value === "invented", says };
  }
}
