import { type TrialAnswer, type TrialNotes, type TrialQuestion, trialQuestions } from "../nouns/trialNotes";

/** A question of the trial's checklist as it is asked (METHODS 9.3). */
export function questionText(question: TrialQuestion): string {
  return questions[question];
}

const questions: Readonly<Record<TrialQuestion, string>> = {
  "one-difference": "Does only one thing differ between the treatments?",
  "one-batch": "Did all seedlings come from one batch?",
  "drawn-by-lot": "Was it drawn by lot which plant got what?",
  "two-full-beds": "Are there at least two beds with every treatment in each?",
  "one-picking-rule": "Are all picked on one day, by one rule?",
  "one-stop-date": "Is there one stop date for all, and is small fruit weighed then?",
  "losses-written": "Are lost plants and their causes written down?",
  "measure-first": "Were main measure and worthwhile change chosen before harvest?",
  "one-plant-a-number": "Is each number one plant (or one bag or bed treated on its own)?",
  "hit-one-treatment": "Did anything hit one treatment only, such as shade, slugs or a hose?",
  "equal-space": "Does every plant have as much space?",
};

/** An answer as it is offered. */
export function answerText(answer: TrialAnswer): string {
  return answers[answer];
}

const answers: Readonly<Record<TrialAnswer, string>> = { yes: "Yes", no: "No", "dont-know": "Don’t know" };

/** How many questions are answered, while some are not; "" once all are. An answer "don't know" is one. */
export function openQuestions({ answers: given }: Pick<TrialNotes, "answers">): string {
  const answered = Object.keys(given).length;
  if (answered === trialQuestions.length) return "";
  return `Trial questions: ${answered} of ${trialQuestions.length} answered. The part Trial asks the rest.`;
}
