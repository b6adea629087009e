import type { DrawnLots } from "../../nouns/findings/drawnLots";

/** A trial as it is settled before planting, with its spots drawn by lot. Days are the spreadsheet's day numbers. */
export interface TrialLayout {
  readonly drawn: DrawnLots;
  readonly question: string;
  /** The main measure, its unit in brackets at the end: "Total per plant (g)". */
  readonly measure: string;
  /** The smallest change worth acting on, as a fraction; below zero where less is wanted. */
  readonly worthwhile: number;
  readonly stopDate: number | null;
  readonly writtenOn: number;
}

/** The heading of the record sheet, by which it is known. */
export const planTitle = "Trial plan and record";

/** Where the parts of the record sheet stand, so that formulas and cells agree. Rows and columns count from 1. */
export const places = {
  question: "E4",
  measure: "E5",
  worthwhile: "E6",
  stopDate: "E7",
  usual: "E8",
  drawNumber: "E9",
  /** The row of the list's headings; the first spot stands below it. */
  heading: 12,
  /** What stands beside the list begins here. */
  beside: "H",
  answers: 5,
} as const;

/** The row of a spot, by its place in the list from 0. */
export function spotRow(at: number): number {
  return places.heading + 1 + at;
}

/** Treatments of a bed that holds one plant of each, or separate plants: then two treatments stand side by side. */
export function standsSideBySide({ treatments, plantsEach, beds }: DrawnLots): boolean {
  return treatments.length === 2 && (beds === null || beds === plantsEach) && treatments.every(headsAColumn);
}

/** A name that cannot be read as an amount, as nothing or as a lost plant: only such a one may head a column. */
function headsAColumn(name: string): boolean {
  return (
    /^\p{L}/u.test(name) &&
    !/^(n\/?a|no|none|nil|nothing|not|lost|dead|died|missing|stolen|broken|forgot)\b/i.test(name)
  );
}
