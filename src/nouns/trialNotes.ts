/**
 * The questions of the trial's checklist, in the order they are asked (METHODS 9.3; items of the kind that guides for
 * reporting trials ask for: objectives, allocation, numbers, exclusions, outcomes set beforehand).
 */
export const trialQuestions = [
  "one-difference",
  "one-batch",
  "drawn-by-lot",
  "two-full-beds",
  "one-picking-rule",
  "one-stop-date",
  "losses-written",
  "measure-first",
  "one-plant-a-number",
  "hit-one-treatment",
  "equal-space",
] as const;

export type TrialQuestion = (typeof trialQuestions)[number];

export const trialAnswers = ["yes", "no", "dont-know"] as const;

export type TrialAnswer = (typeof trialAnswers)[number];

/** What the grower wrote about a trial beside its numbers. A text is "" and a figure null until it is given. */
export interface TrialNotes {
  /** A question that is not there was not answered: that is another thing than "dont-know". */
  readonly answers: Readonly<Partial<Record<TrialQuestion, TrialAnswer>>>;
  /** Crop and variety: "courgettes". */
  readonly crop: string;
  /** What is counted or weighed: "harvest per plant". */
  readonly measure: string;
  /** The measure's unit in words: "grams". */
  readonly unit: string;
  /** "Marlpit Corner" */
  readonly place: string;
  /** "2023", "spring 2026" */
  readonly season: string;
  /** The smallest change worth acting on as a fraction, 0.1 for 10 %; below zero where less is wanted; never 0. */
  readonly worthwhile: number | null;
  /** The day the harvest stops for all, as the spreadsheet's day number (see nouns/day.ts). */
  readonly stopDate: number | null;
  /** The one sheet that the trial stands on, where the workbook holds others too; "" for the whole workbook. */
  readonly onlySheet: string;
}

/** The notes of a workbook in which nothing was written yet. */
export const blankNotes: TrialNotes = {
  answers: {},
  crop: "",
  measure: "",
  unit: "",
  place: "",
  season: "",
  worthwhile: null,
  stopDate: null,
  onlySheet: "",
};

/** The notes as they hold on a sheet: blank where they are about another one. */
export function notesOn(notes: TrialNotes, sheet: string): TrialNotes {
  return notes.onlySheet === "" || notes.onlySheet === sheet ? notes : blankNotes;
}
