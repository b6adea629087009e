import { commonChange } from "../methods/commonChange";
import { rangeVerdict } from "../methods/verdict";
import type { Caution } from "../nouns/caution";
import type { ManyTrials, Trial } from "../nouns/findings/manyTrials";
import type { Absence, Limits } from "../nouns/known";
import { lazy } from "../nouns/lazy";
import type { Place } from "../nouns/place";
import { isProblem, type Problem } from "../nouns/problem";
import type { Entry } from "../nouns/sample";
import type { Verdict } from "../nouns/verdict";
import { missing } from "../ranges/option";
import { readPairs } from "../ranges/readPairs";
import { sameUnit } from "../ranges/sameUnit";
import type { Given } from "./given";
import { isBlank } from "./isBlank";
import { readingCautions } from "./readingCautions";
import { readTrialNames, type TrialNames } from "./readTrialNames";

const CONFIDENCE = 0.95;
const WORTHWHILE = { size: 0.1, lessWanted: false, given: false } as const;

/** What do several seasons, places or crops say together? One row each. */
export function manyTrials(given: Given): ManyTrials | Problem {
  const { usual_averages: usual, new_averages: tried } = given;
  if (!usual) return missing("usual_averages");
  if (!tried) return missing("new_averages");
  const read = readPairs(usual, tried, "keep");
  if (isProblem(read)) return read;
  const unlike = sameUnit(read.usual, read.tried);
  if (unlike !== null) return unlike;
  const heading = read.usual.name !== null || read.tried.name !== null;
  const names = readTrialNames(given.names, usual, heading);
  if (isProblem(names)) return names;
  const { trials, leftOut } = rows(read.usual.entries, read.tried.entries, names);
  if (trials.length === 0) return { problem: "no-usable-trials", where: read.usual.where };
  const { change, range } = commonChange(
    trials.map(({ usual, tried }) => tried / usual),
    CONFIDENCE,
  );
  const changeRange: Limits = "absent" in range ? { low: range, high: range } : range;
  return {
    finding: "many-trials",
    names: { usual: read.usual.name, tried: read.tried.name },
    rowIs: names.rowIs,
    trials,
    leftOut,
    change,
    changeRange,
    verdict: "absent" in range ? withoutRange(range) : verdictOf(range, trials.length),
    worthwhile: WORTHWHILE,
    ahead: trials.filter((trial) => trial.tried > trial.usual).length,
    behind: trials.filter((trial) => trial.tried < trial.usual).length,
    cautions: lazy((): readonly Caution[] => [
      ...(trials.length > 1 ? [{ caution: "C39" } as const] : []),
      ...(leftOut.length > 0 ? [{ caution: "C38", places: leftOut } as const] : []),
      ...readingCautions([read.usual, read.tried]),
      // Many crops are still one place and season; seasons and places are not.
      ...(trials.length > 1 && names.rowIs !== "crop" ? [] : [{ caution: "C12" } as const]),
    ]),
  };
}

interface Rows {
  readonly trials: readonly Trial[];
  readonly leftOut: readonly Place[];
}

/** Rows with two averages above 0 are trials; other rows are left out, but rows that are empty are none. */
function rows(usual: readonly Entry[], tried: readonly Entry[], names: TrialNames): Rows {
  const trials: Trial[] = [];
  const leftOut: Place[] = [];
  for (const [row, entry] of usual.entries()) {
    const other = tried[row];
    const [before, after] = [amountOf(entry), other === undefined ? null : amountOf(other)];
    const { place } = entry;
    if (before !== null && after !== null) {
      trials.push({ name: names.of(row), usual: before, tried: after, change: after / before - 1, place });
    } else if (!isBlank(entry) || (other !== undefined && !isBlank(other))) leftOut.push(place);
  }
  return { trials, leftOut };
}

function amountOf(entry: Entry): number | null {
  return entry.kind === "value" && entry.value > 0 ? entry.value : null;
}

/** One trial is too few; several that changed by the very same share tell nothing of luck (METHODS 4.3). */
function withoutRange({ absent }: Absence): Verdict {
  return absent === "one-trial" ? "few" : "none";
}

/** Two trials are a hint at most (METHODS 8.17). */
function verdictOf({ low, high }: { readonly low: number; readonly high: number }, trials: number): Verdict {
  const verdict = rangeVerdict(low, high, WORTHWHILE.size);
  if (trials > 2) return verdict;
  if (verdict.startsWith("up-")) return "leaning-up";
  return verdict.startsWith("down-") ? "leaning-down" : verdict;
}
