import type { Picks } from "../../src/methods/picks";

/** One row of a log: owner, amount, day. */
type PickRow = readonly [owner: number, amount: number, day: number];

/** A log written row by row; NaN is not known. */
export function pickRows(rows: readonly PickRow[]): Picks & { readonly days: Float64Array } {
  return {
    owners: Int32Array.from(rows, ([owner]) => owner),
    amounts: Float64Array.from(rows, ([, amount]) => amount),
    days: Float64Array.from(rows, ([, , day]) => day),
  };
}
