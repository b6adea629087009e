/** One thing to look out for, in words; `code` is for tests and order only and is never shown. */
export interface CautionLine {
  readonly code: string;
  readonly sentence: string;
}

/** What a cell says of a finding; each is worded when asked for. */
export interface Told {
  /** The finding, one to three sentences. */
  readonly finding: () => string;
  /** One line to repeat in public; "" where there is nothing to repeat. */
  readonly say: () => string;
}

/** A finding in plain words, part by part (METHODS 9). The pane shows the parts in this order. */
export interface Explanation {
  /** The finding, one to three sentences. */
  readonly finding: string;
  /** One line to repeat in public; "" where the function has none. */
  readonly say: string;
  /** What was compared. */
  readonly compared: string;
  /** Could it be luck? */
  readonly luck: readonly string[];
  /** Most important first, place and season last. */
  readonly lookOutFor: readonly CautionLine[];
  readonly next: readonly string[];
  /** How it was worked out, with the source of the method. */
  readonly workings: readonly string[];
}
