import type { Told } from "../nouns/explanation";
import type { HalfPicked } from "../nouns/findings/halfPicked";
import { isKnown } from "../nouns/known";
import { counted } from "./counted";
import { plainNumber } from "./plainNumber";

/** HALFPICKED's finding as a cell tells it (METHODS 9.1): in days, never in percent. */
export function tellHalfPicked(found: HalfPicked): Told {
  return { finding: () => finding(found), say: () => "" };
}

/** The plants that have such a day, in order of the log. */
export function halfDaysOf({ plants }: HalfPicked): readonly number[] {
  return plants.flatMap(({ day }) => (typeof day === "number" ? [day] : []));
}

function finding(found: HalfPicked): string {
  const days = halfDaysOf(found).toSorted((one, other) => one - other);
  const [first = 0] = days;
  const last = days.at(-1) ?? first;
  if (!isKnown(found.mean)) return "No plant has a harvest with dates.";
  if (days.length === 1) return `Half the plant's harvest was in by day ${plainNumber(first)}. ${CARE}`;
  const span = first === last ? "" : `, from day ${plainNumber(first)} to day ${plainNumber(last)}`;
  const plants = counted(days.length, "plant");
  return `For ${plants}, half the harvest was in by day ${plainNumber(found.mean, 1)} on average${span}. ${CARE}`;
}

const CARE = "Earlier is not more: look at totals too.";
