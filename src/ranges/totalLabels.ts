import { isTotalLabel } from "./isTotalLabel";

/** What a label of a total may hold beside the word that says so. */
const BESIDE =
  /(?<!\p{L})(?:sub-?totals?|totals?|sums?|averages?|avg|means?|weeks?|weekly|grand|of|the|for)(?!\p{L})/giu;

/**
 * Which labels of a column name rows of totals or averages (METHODS 3). A label that says more ("Weekly feed") and
 * stands in a quarter of the rows, and in more than one, is a name.
 *
 * @param uses the different labels, and how many rows each stands in
 * @param rows how many rows there are
 */
export function totalLabels(uses: ReadonlyMap<string, number>, rows: number): ReadonlySet<string> {
  const totals = [...uses].filter(([label, count]) => isTotalLabel(label) && !isName(label, count / rows, count));
  return new Set(totals.map(([label]) => label));
}

function isName(label: string, share: number, count: number): boolean {
  return count > 1 && share >= 0.25 && /\p{L}/u.test(label.replace(BESIDE, ""));
}
