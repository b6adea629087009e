import type { TrialNotes } from "../../../nouns/trialNotes";
import { notesFromText, notesKey, textOfNotes } from "../../notesText";
import type { Grid } from "../grid";
import { trouble } from "./trouble";

/** The notes that the browser keeps on this computer for a workbook of this name; blank where it keeps nothing. */
export function practiceNotes(grid: Grid): TrialNotes {
  return notesFromText(keptFor(keyOf(grid)));
}

/** Keeps the notes in the browser's storage; throws "not-kept" where the browser allows none, or has no room. */
export function keepPracticeNotes(grid: Grid, notes: TrialNotes): void {
  try {
    localStorage.setItem(keyOf(grid), textOfNotes(notes));
  } catch {
    throw trouble("not-kept", "");
  }
}

/** By the workbook's name: the grid's own number for it differs from visit to visit. */
function keyOf(grid: Grid): string {
  return `${notesKey} ${grid.book.getName()}`;
}

/** A browser that keeps nothing for pages says so with an exception. */
function keptFor(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}
