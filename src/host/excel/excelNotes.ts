import type { TrialNotes } from "../../nouns/trialNotes";
import { notesFromText, notesKey, textOfNotes } from "../notesText";
import type { SheetTrouble } from "../sheet";
import { answeredSoon } from "./answeredSoon";

/**
 * The notes in the document's settings, which Excel keeps in the file for this add-in alone (Office.Settings). Excel
 * hands the settings over once, when the pane opens: what a colleague writes in the same file meanwhile shows after the
 * pane is opened anew.
 */
export async function excelNotes(): Promise<TrialNotes> {
  return notesFromText(keptText());
}

/** Puts the notes into the document; the file has them once the grower saves it. */
export async function keepExcelNotes(notes: TrialNotes): Promise<void> {
  const before = keptText();
  // As one text: office.js makes a date of any text "Date(…)" that stands alone in what it keeps.
  Office.context.document.settings.set(notesKey, textOfNotes(notes));
  try {
    await answeredSoon("", saved());
  } catch {
    putBack(before);
    throw notKept;
  }
}

const notKept: SheetTrouble = { trouble: "not-kept", where: "" };

function keptText(): string | null {
  const kept: unknown = Office.context.document.settings.get(notesKey);
  return typeof kept === "string" ? kept : null;
}

/** The page must not go on showing what the document does not hold. */
function putBack(text: string | null): void {
  const { settings } = Office.context.document;
  if (text === null) settings.remove(notesKey);
  else settings.set(notesKey, text);
}

function saved(): Promise<void> {
  return new Promise((resolve, reject) => {
    Office.context.document.settings.saveAsync(({ status, error }) => {
      if (status === Office.AsyncResultStatus.Succeeded) resolve();
      else reject(error);
    });
  });
}
