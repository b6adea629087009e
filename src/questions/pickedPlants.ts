import { commonerNames, type NameCount, type OwnerNames } from "../methods/commonerNames";
import { type PickSums, sumPicks, widen } from "../methods/sumPicks";
import type { BesideLabel, PickNote } from "../nouns/findings/pickTally";
import type { Problem } from "../nouns/problem";
import type { PickLabels } from "../ranges/pickLabels";
import type { PickLog } from "../ranges/readPicks";
import { type PickLoss, pickLosses } from "./pickLosses";
import { type NotesByOwner, pickNotes } from "./pickNotes";
import { picksOf } from "./picksOf";

/** A label beside the plants, decided plant by plant. */
export interface Beside extends OwnerNames {
  readonly of: BesideLabel;
  readonly labels: readonly string[];
}

/** A log added up plant by plant, by the plants' numbers. */
export interface PickedPlants {
  readonly log: PickLog;
  readonly sums: PickSums;
  readonly weightsMissing: Int32Array;
  readonly losses: ReadonlyMap<number, PickLoss>;
  readonly notes: NotesByOwner;
  readonly treatments: Beside | null;
  readonly beds: Beside | null;
}

/**
 * Adds up a log plant by plant.
 *
 * @returns most-have-two-names when more than half of the plants stand under several treatments, or several beds: then
 *   the labels do not name single plants
 */
export function pickedPlants(log: PickLog): PickedPlants | Problem {
  const count = log.owners.names.length;
  const sums = sumPicks(picksOf(log), count);
  const weightsMissing = countMissing(log, sums);
  const [treatments = null, beds = null] = (["treatment", "bed"] as const).map((of, at) =>
    beside(log, of, log.besides[at] ?? null),
  );
  const problem = mostHaveTwo(log, sums, treatments) ?? mostHaveTwo(log, sums, beds);
  if (problem !== null) return problem;
  return { log, sums, weightsMissing, losses: pickLosses(log), notes: pickNotes(log), treatments, beds };
}

/** The name that a plant's rows give; null where none does. */
export function nameBeside(beside: Beside | null, owner: number): string | null {
  return beside?.labels[beside.names[owner] ?? -1] ?? null;
}

/** The note that a plant stands under several names; null where it does not. */
export function severalNames(beside: Beside | null, owner: number): PickNote | null {
  const several = beside?.several.get(owner);
  if (beside === null || several === undefined) return null;
  const named = ({ name, rows }: NameCount) => ({ name: beside.labels[name] ?? "", rows });
  return { note: "two-names", of: beside.of, names: several.map(named) };
}

/** Rows without a weight were visits on which something was picked: they count as picks, with their day. */
function countMissing({ owners, amounts, days }: PickLog, sums: PickSums): Int32Array {
  const missing = new Int32Array(owners.names.length);
  for (const row of amounts.missing.keys()) {
    const owner = owners.ids[row] ?? -1;
    missing[owner] = (missing[owner] ?? 0) + 1;
    widen(sums, owner, days?.serials[row] ?? Number.NaN);
  }
  return missing;
}

function beside(log: PickLog, of: BesideLabel, labels: PickLabels | null): Beside | null {
  if (labels === null) return null;
  return { of, labels: labels.names, ...commonerNames(log.owners.ids, labels.ids, log.owners.names.length) };
}

function mostHaveTwo({ owners }: PickLog, { rows }: PickSums, beside: Beside | null): Problem | null {
  if (beside === null) return null;
  const plants = rows.filter((count) => count > 0).length;
  const [first] = beside.several;
  if (first === undefined || 2 * beside.several.size <= plants) return null;
  const [owner, names] = first;
  const [one = "", other = ""] = names.map(({ name }) => beside.labels[name] ?? "");
  return { problem: "most-have-two-names", of: beside.of, plant: owners.names[owner] ?? "", names: [one, other] };
}
