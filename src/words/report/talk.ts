import type { Report } from "../../nouns/report";
import { paragraphsOf } from "./paragraphsOf";

/** The report to be spoken: a minute or two, in paragraphs. */
export function talk({ question, laidOut, results, couldFool, safety }: Report): string {
  return paragraphsOf(
    [question, ...laidOut.slice(0, fewest), ...(results[0]?.compared ?? [])],
    ...results.flatMap(({ about, finding, howSure }) => [[results.length > 1 ? `${about}.` : "", ...finding], howSure]),
    couldFool.slice(0, most).concat(couldFool.slice(most).slice(-1)),
    [...new Set(results.flatMap(({ next }) => next))],
    safety,
  );
}

/** Where and when, and the lots: the rest of the layout is for those who ask. */
const fewest = 2;
/** So many things to look out for, and then that of place and season. */
const most = 2;
