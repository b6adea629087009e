import type { Finding } from "./finding";
import type { ManyTreatments } from "./findings/manyTreatments";
import type { ManyTrials } from "./findings/manyTrials";
import type { TotalsOnly } from "./findings/totalsOnly";
import type { TwoTreatments } from "./findings/twoTreatments";
import type { UpDown } from "./findings/upDown";
import type { WorthIt } from "./findings/worthIt";
import type { LineFormat } from "./line";
import type { TrialNotes } from "./trialNotes";

/** A finding that an audience can be told: what one way of growing gave beside another. */
export type TellableFinding = TwoTreatments | ManyTreatments | TotalsOnly | ManyTrials | WorthIt | UpDown;

const tellable: ReadonlySet<Finding["finding"]> = new Set<TellableFinding["finding"]>([
  "two-treatments",
  "many-treatments",
  "totals-only",
  "many-trials",
  "worth-it",
  "up-down",
]);

/** Whether a finding is one that an audience can be told. */
export function isTellable(finding: Finding): finding is TellableFinding {
  return tellable.has(finding.finding);
}

/** What a grower wants to tell: the results, in order, and what is known of the trial beside its numbers. */
export interface Telling {
  readonly findings: readonly TellableFinding[];
  readonly notes: TrialNotes;
  /** "" for a title made from the findings and notes. */
  readonly title: string;
  /** "" for a question made from the first finding. */
  readonly question: string;
  /** The number that the plan was drawn with; null where it is not known. */
  readonly drawNumber: number | null;
  /** The lines on safety that the trial's words call for (METHODS 7). */
  readonly safety: readonly string[];
}

/** A column of a report's table; percents are fractions. */
export interface ReportColumn {
  readonly heading: string;
  readonly format: LineFormat;
}

/** The figures of one result, a row a treatment; a missing figure is null, or the text that says why. */
export interface ReportTable {
  readonly columns: readonly ReportColumn[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

/** A treatment's average per plant in the unit of the result, and how many plants it rests on. */
export interface ReportBar {
  readonly name: string;
  readonly average: number;
  readonly plants: number;
  /** Whether it is what the others are set against. */
  readonly usual: boolean;
}

/** One result as it is told. */
export interface ReportResult {
  /** "Straw against Bare soil" */
  readonly about: string;
  /** How plants were set against each other, as sentences. */
  readonly compared: readonly string[];
  readonly table: ReportTable;
  /** Of the amounts; "" where it is not known. */
  readonly unit: string;
  /** The averages, the usual first; none where one of them is missing. */
  readonly bars: readonly ReportBar[];
  /** What came out, as sentences. */
  readonly finding: readonly string[];
  /** The same in fewer words, where several treatments take many. */
  readonly findingBriefly: readonly string[];
  /** One line to repeat, as sentences. */
  readonly say: readonly string[];
  readonly howSure: readonly string[];
  /** The same without the picture of swapped labels. */
  readonly howSureBriefly: readonly string[];
  readonly next: readonly string[];
}

/**
 * A trial told to an audience (METHODS 9.4); every text is one or more whole sentences, but for titles and headings.
 */
export interface Report {
  readonly title: string;
  readonly question: string;
  /** Crop, place, season, measure, and how the trial was run, as far as the notes tell. */
  readonly laidOut: readonly string[];
  readonly results: readonly ReportResult[];
  /** Most important first, place and season last. */
  readonly couldFool: readonly string[];
  readonly safety: readonly string[];
  /** What a complete report would also tell, in a few words each: "the season". */
  readonly missing: readonly string[];
}
