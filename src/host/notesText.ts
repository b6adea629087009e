import { type TrialAnswer, type TrialNotes, trialAnswers, trialQuestions } from "../nouns/trialNotes";

/** The key under which a workbook keeps its notes, whatever keeps them. */
export const notesKey = "fairbed.trialNotes";

/** Notes as one line of text, for whatever keeps texts. `notesFromText` reads it back to the same notes. */
export function textOfNotes(notes: TrialNotes): string {
  return JSON.stringify(notes);
}

/**
 * The notes that a kept text holds. What is missing or not of its kind reads as not given, since another version or
 * another program may have written the text; null, or a text that holds no notes, reads as blank notes.
 */
export function notesFromText(text: string | null): TrialNotes {
  const kept = recordIn(text);
  return {
    answers: answersIn(kept.answers),
    crop: textIn(kept.crop),
    measure: textIn(kept.measure),
    unit: textIn(kept.unit),
    place: textIn(kept.place),
    season: textIn(kept.season),
    // a change of nothing is none given
    worthwhile: numberIn(kept.worthwhile) || null,
    stopDate: numberIn(kept.stopDate),
    onlySheet: textIn(kept.onlySheet),
  };
}

function recordIn(text: string | null): Readonly<Record<string, unknown>> {
  if (text === null) return {};
  try {
    const kept: unknown = JSON.parse(text);
    return isRecord(kept) ? kept : {};
  } catch {
    return {};
  }
}

function answersIn(kept: unknown): TrialNotes["answers"] {
  if (!isRecord(kept)) return {};
  const given = trialQuestions.map((question) => [question, kept[question]] as const);
  return Object.fromEntries(given.filter(([, answer]) => isAnswer(answer)));
}

function isRecord(kept: unknown): kept is Readonly<Record<string, unknown>> {
  return typeof kept === "object" && kept !== null;
}

function isAnswer(kept: unknown): kept is TrialAnswer {
  return trialAnswers.some((answer) => answer === kept);
}

function textIn(kept: unknown): string {
  return typeof kept === "string" ? kept : "";
}

function numberIn(kept: unknown): number | null {
  return typeof kept === "number" && Number.isFinite(kept) ? kept : null;
}
