import type { Studentized } from "../numerics/studentized";

/** Critical values are kept for every eighth of a degree of freedom. */
const PARTS = 8;

/** Well above the rounding of a critical value, so that a comparison decided by more needs no exact tail. */
const CLEARLY = 1 + 1e-9;

/**
 * Whether a statistic is beyond what alpha allows, tail(d, df) < alpha, for a test that is asked hundreds of times with
 * degrees of freedom that hardly change. The critical value falls with df, so those kept on either side of df decide
 * nearly always; the tail itself is worked out only in between.
 *
 * @param df above 1/8
 */
export function tailTest({ tail, critical }: Studentized, alpha: number): (d: number, df: number) => boolean {
  const kept: number[] = [];
  const criticalAt = (part: number) => (kept[part] ??= critical(alpha, part / PARTS));
  return (d, df) => {
    if (d > CLEARLY * criticalAt(Math.floor(df * PARTS))) return true;
    if (d * CLEARLY < criticalAt(Math.ceil(df * PARTS))) return false;
    return tail(d, df) < alpha;
  };
}
