import type { Telling } from "../../nouns/report";
import { unitOf } from "./laidOut";

/** What METHODS 9.4 asks of a complete report and the trial's notes do not tell, in their order. */
export function missingFrom({ notes, findings, drawNumber }: Telling): readonly string[] {
  const { crop, place, season, measure, unit, answers } = notes;
  const unitKnown = unit !== "" || findings.some((finding) => unitOf(finding) !== "");
  const drawn = answers["drawn-by-lot"];
  const needed: readonly (readonly [what: string, known: boolean])[] = [
    ["the crop", crop !== ""],
    ["the place", place !== ""],
    ["the season", season !== ""],
    ["the measure", measure !== ""],
    ["its unit", unitKnown],
    ["whether lots were drawn", drawn === "yes" || drawn === "no" || drawNumber !== null],
    ["the draw number", drawn === "no" || drawNumber !== null],
  ];
  return needed.filter(([, known]) => !known).map(([what]) => what);
}
