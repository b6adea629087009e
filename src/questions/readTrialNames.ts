import type { CellRange } from "../nouns/cellRange";
import type { ManyTrials } from "../nouns/findings/manyTrials";
import type { Problem } from "../nouns/problem";
import { filledLength } from "../ranges/cellsOf";
import type { Argument } from "../ranges/option";
import { readLabels } from "../ranges/readLabels";
import { sameShape } from "../ranges/sameShape";
import { trimTogether } from "../ranges/trimTogether";

/** What the rows are called. */
export interface TrialNames {
  readonly rowIs: ManyTrials["rowIs"];
  /** The name of a row without the heading's, from 0; null where it has none. */
  readonly of: (row: number) => string | null;
}

/**
 * The names beside the averages, row by row. Their heading tells what one row is: "Season" or "Year", "Crop" or
 * "Variety"; anything else is a trial.
 *
 * @param averages the range that the names stand beside
 * @param heading whether that range starts with a heading
 */
export function readTrialNames(given: Argument, averages: CellRange, heading: boolean): TrialNames | Problem {
  if (!given || filledLength(given) === 0) return { rowIs: "trial", of: () => null };
  const [names = given, beside = averages] = trimTogether([given, averages]);
  const differ = sameShape(names, beside);
  if (differ !== null) return differ;
  const { name, entries } = readLabels(names, "name", { heading });
  return { rowIs: rowIs(name ?? ""), of: (row) => entries[row] ?? null };
}

function rowIs(heading: string): ManyTrials["rowIs"] {
  if (/season|year/i.test(heading)) return "season";
  return /crop|variet|kind/i.test(heading) ? "crop" : "trial";
}
