import type { LostPlants } from "../nouns/lostPlants";
import { isProblem, type Problem } from "../nouns/problem";
import type { Plant, Sample } from "../nouns/sample";
import { type Argument, missing } from "../ranges/option";
import { type Negatives, readSample } from "../ranges/readSample";
import { usablePlants } from "./usablePlants";

/** An amounts range as read, and its plants that count. */
export interface Harvest {
  readonly sample: Sample;
  readonly plants: readonly Plant[];
}

/** How the cells of an amounts range are to be taken. */
export interface HarvestRule {
  readonly negatives: Negatives;
  readonly lostPlants: LostPlants;
}

/** Reads an amounts range that must hold at least one plant that counts. */
export function readHarvest(given: Argument, argument: string, rule: HarvestRule): Harvest | Problem {
  if (given === null || given === undefined) return missing(argument);
  const sample = readSample(given, rule.negatives);
  if (isProblem(sample)) return sample;
  const plants = usablePlants(sample, rule.lostPlants);
  return plants.length === 0 ? { problem: "no-usable-plants", where: sample.where } : { sample, plants };
}

/** The plants' amounts, in the sample's unit. */
export function valuesOf(plants: readonly Plant[]): readonly number[] {
  return plants.map(({ value }) => value);
}
