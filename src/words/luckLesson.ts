import { aboutOutOfHundred } from "./chance";
import { percentText } from "./percent";

/** Two teams of plants treated alike, and how often luck alone sets them that far apart: all fractions. */
export interface LuckLesson {
  readonly unevenness: number;
  readonly lead: number;
  readonly chance: number;
}

/** What luck alone does with two teams of plants that were all treated alike (METHODS 11), for a class. */
export function luckLesson({ unevenness, lead, chance }: LuckLesson): string {
  const plants = `Say that plants treated alike differ by ${percentText(unevenness)}.`;
  return `${plants} Luck alone then gives a lead of ${percentText(lead)} or more in ${aboutOutOfHundred(chance)} of 100 trials.`;
}
