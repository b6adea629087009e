import type { Remark } from "../nouns/reading";

/** A remark on one row of a column; rows count from 0, the heading aside. */
export interface Noted {
  readonly row: number;
  readonly remark: Remark;
}
