import type { CleanColumn } from "./cleanTable";

/** Which of a table's columns tell the plant, its treatment and its bed; −1 for none. */
export interface Roles {
  readonly plants: number;
  readonly treatments: number;
  readonly beds: number;
}

const PLANTS = /^(?:plant|label|tag|id)\b/i;
const TREATMENTS = /^(?:treatment|mulch|variety|cultivar|method|way|group)/i;
const BEDS = /^(?:bed|block|plot|row)\b/i;

/** What the headings say of the columns of names; the grower may choose otherwise. */
export function rolesOf(columns: readonly CleanColumn[]): Roles {
  const named = (pattern: RegExp) =>
    columns.findIndex(({ kind, heading }) => kind === "label" && pattern.test(heading));
  return { plants: named(PLANTS), treatments: named(TREATMENTS), beds: named(BEDS) };
}
