import type { Context } from "../context";
import { choice, field } from "../dom/blocks";
import { element } from "../dom/element";
import { fieldNumber } from "./fieldNumber";
import { type Beds, type PlanQuestion, USUAL_CHANCE } from "./planQuestion";
import { unevenField } from "./unevenField";

/** What the form holds: the plan, and how its unevenness is typed into a formula on a sheet. */
export interface PlanGiven {
  readonly question: PlanQuestion;
  readonly unevennessOn: (sheet: string) => string;
}

/** The questions of the Plan part. */
export interface PlanForm {
  readonly root: HTMLElement;
  /** What was filled in; a sentence says what is missing. */
  readonly given: () => PlanGiven | string;
  /** To be called when the selection has changed. */
  readonly refresh: () => void;
}

const bedChoices = [
  { value: "none", text: "No beds: all alike" },
  { value: "one each", text: "One of each in every bed" },
  ...[2, 3, 4, 5, 6, 8].map((beds) => ({ value: String(beds), text: `${beds} beds, as many of each in every one` })),
];

const wayChoices = [2, 3, 4, 5, 6].map((ways) => ({
  value: String(ways),
  text: `${ways}`,
}));

/** The form; `changed` is called after every change in it. */
export function planForm(context: Context, changed: () => void): PlanForm {
  const room = fieldNumber("Plants I have room for", { start: 24, low: 4, high: 2000 });
  const ways = choice(wayChoices);
  const beds = choice(bedChoices);
  const uneven = unevenField(context, changed);
  const hoped = fieldNumber("Change you hope for, in %", { start: 30, low: -99, high: 499 });
  const worthwhile = fieldNumber("Worth switching for, in %", { start: 10, low: 1, high: 99 });
  const pair = element("div", { class: "fields" }, hoped.root, worthwhile.root);
  const size = element("div", { class: "fields" }, room.root, field("Ways to compare", ways));
  const root = element("div", { class: "form" }, size, field("Beds", beds), uneven.root, pair);
  root.addEventListener("input", changed);
  return { root, given, refresh: uneven.refresh };

  function given(): PlanGiven | string {
    for (const number of [room, hoped, worthwhile]) if (number.value() === null) return number.asks;
    const unevenness = uneven.unevenness();
    if (typeof unevenness === "string") return unevenness;
    const question: PlanQuestion = {
      room: room.value() ?? 0,
      ways: Number(ways.value),
      beds: bedsOf(beds.value),
      unevenness,
      hoped: (hoped.value() ?? 0) / 100,
      worthwhile: ((worthwhile.value() ?? 0) / 100) * Math.sign(hoped.value() ?? 1),
      chance: USUAL_CHANCE,
    };
    return { question, unevennessOn: (sheet) => uneven.source(sheet) ?? percentSource(unevenness) };
  }
}

function bedsOf(value: string): Beds {
  return value === "none" || value === "one each" ? value : Number(value);
}

/** A fraction as it is typed into a formula: "35%". */
export function percentSource(fraction: number): string {
  return `${Number((fraction * 100).toPrecision(12))}%`;
}
