import { expect } from "vitest";
import type { RatioCurve } from "../../src/methods/ratioCurve";

/** A range of the change as R found it; null where there is no limit. */
export interface RangeByR {
  readonly low: number | null;
  readonly high: number | null;
}

/** Fails unless the ratios that the curve keeps end where R's do, to one part in 10¹¹, or go on where R's have no end. */
export function endsWhere({ excludes }: RatioCurve, { low, high }: RangeByR): void {
  const step = 1e-11;
  const around = (change: number) => [(1 + change) * (1 - step), (1 + change) * (1 + step)].map(excludes);
  if (low === null) expect(excludes(0), "no lower limit").toBe(false);
  else expect(around(low), `lower limit ${low}`).toEqual([true, false]);
  if (high === null) expect(excludes(1e6), "no upper limit").toBe(false);
  else expect(around(high), `upper limit ${high}`).toEqual([false, true]);
}
