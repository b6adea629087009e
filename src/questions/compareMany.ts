import type { HowMany, ManyTreatments } from "../nouns/findings/manyTreatments";
import { isProblem, type Problem } from "../nouns/problem";
import { cellText } from "../ranges/cellText";
import { labelKey } from "../ranges/labelKey";
import { type Argument, missing, oneCell } from "../ranges/option";
import { readChoice } from "../ranges/readChoice";
import { type Labelled, readLabelled } from "../ranges/readLabelled";
import { allRead } from "./allRead";
import type { Given } from "./given";
import { type ManyGroups, manyGroups } from "./manyGroups";
import { manyTreatments } from "./manyTreatments";
import { readLostPlants } from "./readLostPlants";
import { readWorthwhile } from "./readWorthwhile";

const WAYS = ["against usual", "all pairs", "own unevenness"] as const;
const MOST_TREATMENTS = 20;

/** Several treatments: which gave more than the usual, or than each other? */
export function compareMany(given: Given): ManyTreatments | Problem {
  const read = allRead({
    labelled: readTreatments(given),
    how: readChoice(given.how, { argument: "how", allowed: WAYS, fallback: null }),
    worthwhile: readWorthwhile(given),
    lostPlants: readLostPlants(given),
  });
  if (isProblem(read)) return read;
  const { labelled, worthwhile, lostPlants } = read;
  const groups = manyGroups(labelled, lostPlants);
  const usual = readUsual(given.usual, groups.names);
  if (typeof usual === "object" && usual !== null) return usual;
  const how = read.how ?? (usual === null ? "all pairs" : "against usual");
  return notComparable(groups, usual, how) ?? manyTreatments(groups, { how, usual, worthwhile, lostPlants });
}

function readTreatments({ amounts, treatments, beds }: Given): Labelled | Problem {
  if (!amounts) return missing("amounts");
  if (!treatments) return missing("treatments");
  const labels = [treatments, beds].map((range) => (range ? { range, kind: "name" as const } : null));
  return readLabelled(amounts, labels, "keep");
}

/** The number of the treatment named as the usual; null when none is named. */
function readUsual(given: Argument, names: readonly string[]): number | null | Problem {
  const read = oneCell(given, "usual");
  if (isProblem(read)) return read;
  if (read.cell === null) return null;
  const named = cellText(read.cell);
  const at = names.findIndex((name) => labelKey(name, "name") === labelKey(named, "name"));
  return at < 0 ? { problem: "unknown-treatment", given: named, names } : at;
}

function notComparable({ names, beds }: ManyGroups, usual: number | null, how: HowMany): Problem | null {
  if (names.length < 2) return { problem: "too-few-treatments", names };
  if (names.length > MOST_TREATMENTS)
    return { problem: "too-many-treatments", count: names.length, most: MOST_TREATMENTS };
  if (how === "against usual" && usual === null) return { problem: "usual-not-named", names };
  return how === "own unevenness" && beds !== null ? { problem: "own-unevenness-in-beds" } : null;
}
