import type { HowMany } from "../../src/nouns/findings/manyTreatments";
import { type JointComparison, jointComparison } from "../../src/questions/jointComparison";
import type { ManyGroups } from "../../src/questions/manyGroups";
import { sample } from "./range";

/** Plants of several treatments in columns: amounts, numbers of treatments, and numbers of beds where there are any. */
export interface Columns {
  readonly value: readonly number[];
  readonly treatment: readonly number[];
  readonly bed?: readonly number[];
}

/** A trial without lost plants, its treatments named a, b, c … and its beds 1, 2, 3 … */
export function trialOf({ value, treatment, bed }: Columns): ManyGroups {
  const read = sample("amounts", value);
  const plants = value.map((amount, at) => ({
    value: amount,
    place: read.entries[at]?.place ?? { argument: "amounts", row: at + 1, column: null, cell: null },
    treatment: treatment[at] ?? 0,
    bed: bed?.[at] ?? 0,
  }));
  return {
    sample: read,
    names: Array.from({ length: Math.max(...treatment) + 1 }, (_, at) => String.fromCharCode(97 + at)),
    beds: bed === undefined ? null : Array.from({ length: Math.max(...bed) + 1 }, (_, at) => `${at + 1}`),
    plants,
    lost: [],
    notRecorded: [],
    leftOut: [],
  };
}

/** The columns of treatments given one after the other, without beds. */
export function columnsOf(groups: readonly (readonly number[])[]): Columns {
  return { value: groups.flat(), treatment: groups.flatMap((group, at) => group.map(() => at)) };
}

/** How to compare, and the number of the usual. */
export interface Asked {
  readonly how: HowMany;
  readonly usual: number | null;
}

/** The comparisons of all treatments that have plants; 10 % is worthwhile. */
export function joint(groups: ManyGroups, { how, usual }: Asked): JointComparison {
  const usable = groups.names.map((_, at) => at).filter((at) => groups.plants.some((plant) => plant.treatment === at));
  const worthwhile = { size: 0.1, lessWanted: false, given: false };
  return jointComparison(groups, { how, usual, worthwhile, lostPlants: "leave out" }, usable);
}
