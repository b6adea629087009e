import { type TrialNotes, trialQuestions } from "../../nouns/trialNotes";
import { section } from "../dom/blocks";
import { element } from "../dom/element";
import { aboutFields } from "./aboutFields";
import { questionFields } from "./questionFields";
import { sheetField } from "./sheetField";

/** The trial's notes as fields. */
export interface TrialForm {
  readonly root: HTMLElement;
  readonly given: () => TrialNotes;
  /** Fills the fields; what says this already is left as it is. */
  readonly show: (notes: TrialNotes) => void;
  /** Offers these sheets for the notes to be about. */
  readonly offer: (sheets: readonly string[]) => void;
}

export function trialForm(): TrialForm {
  const about = aboutFields();
  const questions = questionFields();
  const only = sheetField();
  const count = element("span", { class: "hint" });
  const fromPlan = element(
    "p",
    { class: "hint" },
    "Measure, stop date and change may stay empty where a plan’s sheet has them.",
  );
  const root = element(
    "div",
    { class: "explanation" },
    section("About the trial", [about.root, fromPlan, only.root]),
    section("Questions", [questions.root], count),
  );
  root.addEventListener("change", tally);
  return {
    root,
    given: () => ({ ...about.given(), answers: questions.given(), onlySheet: only.value() }),
    offer: only.offer,
    show: ({ answers, onlySheet, ...rest }) => {
      only.show(onlySheet);
      about.show(rest);
      questions.show(answers);
      tally();
    },
  };

  function tally(): void {
    count.textContent = `${Object.keys(questions.given()).length} of ${trialQuestions.length} answered`;
  }
}
