import { dayOf } from "../nouns/day";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/**
 * A day as a cell shows it: "2023-07-05", which sorts, can be read again and means one day everywhere; "5 Jul" where
 * no year is known.
 *
 * @param serial Excel's number for the day
 */
export function dayText(serial: number, yearsKnown: boolean): string {
  const { year, month, day } = dayOf(serial);
  if (!yearsKnown) return `${day} ${MONTHS[month - 1]}`;
  return [`${year}`, twoDigits(month), twoDigits(day)].join("-");
}

function twoDigits(number: number): string {
  return String(number).padStart(2, "0");
}
