import type { Caution } from "../nouns/caution";
import { type TrialNotes, type TrialQuestion, trialQuestions } from "../nouns/trialNotes";

/**
 * What the answers to the trial's checklist warn of (METHODS 9.2): C32 several things changed at once, C31 seedlings of
 * different source, C10 plants chosen instead of drawn by lot, C34 the measure chosen afterwards. "Don't know" and a
 * question that was not answered warn of nothing.
 */
export function trialCautions({ answers }: Pick<TrialNotes, "answers">): readonly Caution[] {
  return trialQuestions.flatMap((question) => {
    const caution = ifNo[question];
    return answers[question] === "no" && caution !== undefined ? [{ caution }] : [];
  });
}

const ifNo: Readonly<Partial<Record<TrialQuestion, "C10" | "C31" | "C32" | "C34">>> = {
  "one-difference": "C32",
  "one-batch": "C31",
  "drawn-by-lot": "C10",
  "measure-first": "C34",
};
