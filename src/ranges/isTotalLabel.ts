/** Longer labels are notes; this keeps the matching cheap. */
const LONGEST = 200;

/** Whole words only: "Summer squash" holds no sum and "Meaning" no mean. */
const TOTAL_WORD = /(?<!\p{L})(?:sub-?totals?|totals?|sums?|averages?|avg|means?|weeks?|weekly)(?!\p{L})/iu;

/** Whether a label names a row of totals or averages, which is no plant's row (METHODS 3): "Week total", "Average". */
export function isTotalLabel(label: string): boolean {
  return label.length <= LONGEST && TOTAL_WORD.test(label);
}
