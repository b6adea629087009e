import { BEDS, PLACES, PLANTS } from "../../headings";
import type { CleanColumn } from "./cleanTable";

/** Which of a table's columns tell the plant, its treatment and its bed; −1 for none. */
export interface Roles {
  readonly plants: number;
  readonly treatments: number;
  readonly beds: number;
}

const IDS = /^ids?\b/i;
const TREATMENTS = /^(?:treatment|mulch|variety|cultivar|method|way|group)/i;

/** What the headings say of the columns of names, the likeliest first; the grower may choose otherwise. */
export function rolesOf(columns: readonly CleanColumn[]): Roles {
  const named = (...likely: readonly RegExp[]) =>
    likely
      .map((pattern) => columns.findIndex(({ kind, heading }) => kind === "label" && pattern.test(heading)))
      .find((at) => at >= 0) ?? -1;
  return { plants: named(PLANTS, IDS), treatments: named(TREATMENTS), beds: named(BEDS, PLACES) };
}
