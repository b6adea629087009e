import type { BesideLabel, PickNote, PickStatus, PickTally, TalliedPlant } from "../nouns/findings/pickTally";
import { lazy } from "../nouns/lazy";
import { isProblem, type Problem } from "../nouns/problem";
import { labelKey } from "../ranges/labelKey";
import { missing } from "../ranges/option";
import { type AllPlants, type ListedPlant, readAllPlants } from "../ranges/readAllPlants";
import { type PickLog, readPicks } from "../ranges/readPicks";
import { readUnit } from "../ranges/readUnit";
import type { Given } from "./given";
import { givenDates } from "./givenDates";
import { nameBeside, type PickedPlants, pickedPlants, severalNames } from "./pickedPlants";
import { tallyCautions } from "./tallyCautions";

/** What does a log of picks come to, plant by plant? */
export function tallyPicks(given: Given): PickTally | Problem {
  const picked = readPicked(given);
  if (isProblem(picked)) return picked;
  const list = readList(given, picked.log);
  if (list !== null && isProblem(list)) return list;
  const plants = list === null ? loggedPlants(picked) : listedPlants(picked, list);
  if (plants.length === 0) return { problem: "no-picks", where: picked.log.where };
  const lacking = withoutTreatment(plants, given);
  return lacking ?? tally(picked, plants, list);
}

function readPicked(given: Given): PickedPlants | Problem {
  const { plants, amounts, treatments = null, beds = null } = given;
  if (!plants) return missing("plants");
  if (!amounts) return missing("amounts");
  const unit = readUnit(given.unit, null);
  if (typeof unit === "object" && unit !== null) return unit;
  const log = readPicks({
    owners: plants,
    ownerKind: "plant",
    amounts,
    dates: givenDates(given.dates),
    lossNotes: given.loss_notes ?? null,
    besides: [treatments, beds],
    unit,
    start: null,
  });
  return isProblem(log) ? log : pickedPlants(log);
}

/** Null for a list that is left out or empty. */
function readList({ all_plants }: Given, { owners, ownersHeading }: PickLog): AllPlants | null | Problem {
  if (!all_plants) return null;
  const keys = new Set(owners.names.map((name) => labelKey(name, "plant")));
  const list = readAllPlants(all_plants, { plants: ownersHeading, keys });
  return isProblem(list) || list.plants.length > 0 ? list : null;
}

function loggedPlants(picked: PickedPlants): readonly TalliedPlant[] {
  return picked.log.owners.names.flatMap((name, owner) =>
    (picked.sums.rows[owner] ?? 0) > 0 ? [tallied(picked, name, owner)] : [],
  );
}

/** The plants of the list, then those that stand in the log only. */
function listedPlants(picked: PickedPlants, { plants }: AllPlants): readonly TalliedPlant[] {
  const owners = new Map(picked.log.owners.names.map((name, owner) => [labelKey(name, "plant"), owner]));
  const keys = new Set(plants.map(({ plant }) => labelKey(plant, "plant")));
  const listed = plants.map((plant) =>
    asListed(plant, tallied(picked, plant.plant, owners.get(labelKey(plant.plant, "plant")) ?? -1)),
  );
  const others = loggedPlants(picked).filter(({ plant }) => !keys.has(labelKey(plant, "plant")));
  return [
    ...listed,
    ...others.map((plant) => ({ ...plant, notes: [...plant.notes, { note: "not-listed" } as const] })),
  ];
}

/** The list's treatment and bed win over the log's. */
function asListed({ treatment, bed }: ListedPlant, plant: TalliedPlant): TalliedPlant {
  const differ = [otherwise("treatment", treatment, plant.treatment), otherwise("bed", bed, plant.bed)];
  return {
    ...plant,
    treatment: treatment ?? plant.treatment,
    bed: bed ?? plant.bed,
    notes: [...plant.notes, ...differ.filter((note) => note !== null)],
  };
}

function otherwise(of: BesideLabel, listed: string | null, logged: string | null): PickNote | null {
  if (listed === null || logged === null || labelKey(listed, "name") === labelKey(logged, "name")) return null;
  return { note: "listed-otherwise", of, listed, logged };
}

/** One plant by its number in the log; −1 for one that was never picked. */
function tallied(picked: PickedPlants, plant: string, owner: number): TalliedPlant {
  const { sums, treatments, beds } = picked;
  const weightsMissing = picked.weightsMissing[owner] ?? 0;
  return {
    plant,
    treatment: nameBeside(treatments, owner),
    bed: nameBeside(beds, owner),
    status: statusOf(picked, owner),
    rows: sums.rows[owner] ?? 0,
    picked: sums.totals[owner] ?? 0,
    nothingRead: sums.weighed[owner] === 0,
    picks: (sums.picks[owner] ?? 0) + weightsMissing,
    weightsMissing,
    first: dayOrNone(sums.first[owner]),
    last: dayOrNone(sums.last[owner]),
    notes: notesOf(picked, owner),
  };
}

function statusOf({ losses, weightsMissing }: PickedPlants, owner: number): PickStatus {
  const loss = losses.get(owner);
  if (loss !== undefined) return loss.isPickedLater ? "lost-picked-later" : "lost";
  return (weightsMissing[owner] ?? 0) > 0 ? "weight-missing" : "ok";
}

function notesOf({ losses, notes, treatments, beds }: PickedPlants, owner: number): readonly PickNote[] {
  const loss = losses.get(owner);
  const lost: readonly PickNote[] = loss === undefined ? [] : [loss.note];
  const later: readonly PickNote[] =
    loss?.isPickedLater === true ? [{ note: "picked-later", amount: loss.pickedLater }] : [];
  const names = [severalNames(treatments, owner), severalNames(beds, owner)].filter((note) => note !== null);
  return [...lost, ...later, ...(notes.get(owner) ?? []), ...names];
}

function dayOrNone(day: number | undefined): number | null {
  return day === undefined || Number.isNaN(day) ? null : day;
}

/** With treatments given, a plant that was never picked needs its treatment from the list. */
function withoutTreatment(plants: readonly TalliedPlant[], { treatments }: Given): Problem | null {
  const lacking = treatments ? plants.filter(({ treatment, rows }) => treatment === null && rows === 0) : [];
  if (lacking.length === 0) return null;
  return { problem: "unpicked-without-treatment", plants: lacking.map(({ plant }) => plant) };
}

function tally(picked: PickedPlants, plants: readonly TalliedPlant[], list: AllPlants | null): PickTally {
  const { log, sums } = picked;
  const leftOut = [
    ...log.unlabelled.map((row) => ({ row, why: "no-label" as const })),
    ...log.totalRows.map((row) => ({ row, why: "total-row" as const })),
  ];
  const found = {
    finding: "pick-tally",
    unit: log.amounts.unit,
    plants,
    rows: sums.rows.reduce((sum, count) => sum + count, 0),
    leftOut: leftOut
      .sort((one, other) => one.row - other.row)
      .map(({ row, why }) => ({ why, place: log.cellAt("owners", row).place })),
    withTreatments: picked.treatments !== null || list?.withTreatments === true,
    yearsKnown: log.days?.yearsKnown ?? true,
  } as const;
  return { cautions: lazy(() => tallyCautions(found, picked, list)), ...found };
}
