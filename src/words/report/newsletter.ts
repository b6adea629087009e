import type { Report } from "../../nouns/report";
import { paragraphsOf } from "./paragraphsOf";

/** The report for a newsletter: a heading and a few short paragraphs. */
export function newsletter({ title, question, laidOut, results, couldFool, safety }: Report): string {
  return paragraphsOf(
    [title],
    [question, ...laidOut.slice(0, 1), ...(results[0]?.compared.slice(0, 1) ?? [])],
    ...results.map(({ about, findingBriefly, howSureBriefly }) => [
      results.length > 1 ? `${about}.` : "",
      ...findingBriefly,
      ...howSureBriefly,
    ]),
    couldFool.slice(-1),
    [...new Set(results.flatMap(({ next }) => next))],
    safety,
  );
}
