import type { Cell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import type { LabelKind } from "./labelKey";
import type { AskedUnit } from "./readUnit";

/** The ranges of a pick log that belong together, row by row: one row a pick. */
export interface LogRanges {
  /** Who bore it: plants, or treatments. */
  readonly owners: CellRange;
  readonly ownerKind: LabelKind;
  readonly amounts: CellRange;
  readonly dates: CellRange | null;
  /** A column beside the amounts in which lost-words stand, and whatever else; null where the amounts hold them. */
  readonly lossNotes: CellRange | null;
  /** Further labels of a row; null for one not given. */
  readonly besides: readonly (CellRange | null)[];
}

/** A pick log as a call gives it. */
export interface PickRanges extends LogRanges {
  /** The unit asked for. */
  readonly unit: AskedUnit | null;
  /** One more date, written like those of the log; null for none. */
  readonly start: Cell;
}
