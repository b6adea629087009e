import { dunnett } from "../numerics/dunnett";
import { remembered } from "../numerics/remembered";
import type { Studentized } from "../numerics/studentized";
import { studentizedRange } from "../numerics/studentizedRange";

/**
 * Dunnett's distribution of these correlations (see numerics/dunnett.ts), kept with what was worked out of it: trials
 * of equal numbers, and one trial with one plant after the other left out, share it.
 */
export const dunnettOf = remembered((lambdas: readonly number[]) => withKeptCriticals(dunnett(lambdas)));

/** The studentized range of k averages (see numerics/studentizedRange.ts), kept for every trial of k treatments. */
export const rangeOf = remembered((k: number) => withKeptCriticals(studentizedRange(k)));

function withKeptCriticals({ tail, critical }: Studentized): Studentized {
  return { tail, critical: remembered(critical) };
}
