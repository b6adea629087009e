import type { Cell } from "../nouns/cell";
import type { Corner } from "../nouns/cellRange";
import type { TrialNotes } from "../nouns/trialNotes";
import type { NewSheet, NumberFormat } from "./newSheet";
import type { OwnSheet } from "./ownSheet";

/** What the grower has selected, and what stands in its first cell. */
export interface Selection {
  /** Sheet name without quotes. */
  readonly sheet: string;
  /** Address without the sheet: "B2" or "B2:C9". */
  readonly address: string;
  /** The first cell's formula in the sheet's neutral form (English names, commas), "" where there is none. */
  readonly formula: string;
  /** The same formula as the grower sees it, in the language of their Excel. */
  readonly formulaShown: string;
  /** The first cell's value. */
  readonly value: Cell;
  /** The first cell's number format: "General", "0.0%". */
  readonly numberFormat: string;
}

/** A block of cells read from the sheet itself: here an empty cell is `null`, so a zero is a zero. */
export interface Reading {
  readonly cells: readonly (readonly Cell[])[];
  readonly corner: Corner;
}

/** Why a spreadsheet would not do what was asked; `Sheet` promises reject with this. */
export interface SheetTrouble {
  readonly trouble:
    | "editing"
    | "not-cells"
    | "several-areas"
    | "no-such-range"
    | "protected"
    | "not-empty"
    | "not-kept"
    | "half-made"
    | "unreadable";
  /** The reference or address concerned, as far as there is one. */
  readonly where: string;
}

/** What is to be put into a cell. */
export interface Entry {
  readonly sheet: string;
  /** "E4" */
  readonly address: string;
  /** Neutral form (English names, commas), starting with "="; or a plain text or number. */
  readonly content: string | number;
  readonly format: NumberFormat;
}

/** A cell whose formula holds one of our calls. */
export interface CallCell {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
}

/** How the host looks, so that the pane can follow. */
export interface Theme {
  readonly dark: boolean;
}

/** All the pane may ask of a spreadsheet. Excel and the practice sheet each answer in their own file. */
export interface Sheet {
  /** The present selection. */
  selection(): Promise<Selection>;
  /**
   * Reads a reference as it stands in a formula ("B2:B9", "'My sheet'!B2:B9", a name, a whole column trimmed to
   * the cells in use). `home` is the sheet that the formula stands on.
   */
  read(reference: string, home: string): Promise<Reading>;
  /** Calls back after the selection moved or a cell changed; the result stops the calls. */
  onChange(notice: () => void): () => void;
  /** Writes entries. Rejects with "not-empty" before writing anything when a cell holds something, unless `over`. */
  write(entries: readonly Entry[], over: boolean): Promise<void>;
  /**
   * Adds a sheet behind the others, shows it, and answers with the name it got. Never touches a sheet that was there:
   * a name that is taken gets a number. When a step fails, what was added is taken away again; "half-made" says that
   * it could not be.
   */
  add(sheet: NewSheet): Promise<string>;
  /** Names of the sheets that `putOwn` made and that are still there, the newest last. */
  ownSheets(): Promise<readonly string[]>;
  /**
   * Adds a sheet as `add` does, and marks it as ours. One of ours that is named in `over` is taken away after that, and
   * the new one gets its name and its place; when a step fails, it stays as it was. Any other sheet is never touched.
   */
  putOwn(sheet: OwnSheet, over: string | null): Promise<string>;
  /** Sets the number format of a cell. */
  format(sheet: string, address: string, format: NumberFormat): Promise<void>;
  /** Selects a cell so that the grower sees it. */
  select(sheet: string, address: string): Promise<void>;
  /** Every formula of the workbook that holds one of our calls. */
  calls(): Promise<readonly CallCell[]>;
  /** What the grower wrote about the trial, as kept with the workbook; blank notes where nothing was. */
  notes(): Promise<TrialNotes>;
  /** Keeps notes with the workbook, in place of those before. Rejects with "not-kept", and then those before hold. */
  keepNotes(notes: TrialNotes): Promise<void>;
  theme(): Theme;
}
