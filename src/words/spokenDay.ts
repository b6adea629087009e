import type { WrittenDay } from "../nouns/day";

const MONTHS = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

/** A day for people, in one way for all countries: "5 July 2023", "5 July" where the year is not known. */
export function spokenDay({ year, month, day }: WrittenDay): string {
  const name = MONTHS[month - 1] ?? "?";
  return year === null ? `${day} ${name}` : `${day} ${name} ${year}`;
}
