import type { Caution } from "../nouns/caution";

/** Which of two cautions comes first, by their codes: negative for the first. */
export function byPriority(one: string, other: string): number {
  return places.indexOf(one) - places.indexOf(other);
}

/** The cautions by the priorities of METHODS 9.2, most important first; place and season (C12) comes last. */
export function orderCautions(cautions: readonly Caution[]): readonly Caution[] {
  return [...cautions].sort((one, other) => byPriority(one.caution, other.caution));
}

/** Priority 1, 2, 3, 4 and last; within a priority in METHODS' own order. */
const order: readonly Caution["caution"][] = [
  ...(["C01", "C02", "C18", "C05", "C21", "C13", "C17", "C31", "C32", "C35"] as const),
  ...(["C03", "C04", "C09", "C11", "C06", "C10", "C15", "C22", "C28", "C29", "C37", "C38", "C39"] as const),
  ...(["C07", "C16", "C20", "C25", "C27", "C30", "C34", "C36"] as const),
  "C14",
  "C12",
];

const places: readonly string[] = order;
