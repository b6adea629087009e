import { dayOf } from "../nouns/day";
import { spokenDay } from "./spokenDay";

/**
 * A day as a cell shows it: "2023-07-05", which sorts, can be read again and means one day everywhere; "5 July" where
 * no year is known.
 *
 * @param serial Excel's number for the day
 */
export function dayText(serial: number, yearsKnown: boolean): string {
  const { year, month, day } = dayOf(serial);
  if (!yearsKnown) return spokenDay({ year: null, month, day });
  return [`${year}`, twoDigits(month), twoDigits(day)].join("-");
}

function twoDigits(number: number): string {
  return String(number).padStart(2, "0");
}
