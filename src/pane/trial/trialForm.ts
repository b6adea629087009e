import { type TrialNotes, trialQuestions } from "../../nouns/trialNotes";
import { notesToSearch, safetyLines } from "../../words/safety";
import { paragraphs, section } from "../dom/blocks";
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
  /** Shows the lines on safety that these texts of the sheets call for, and those of the notes themselves. */
  readonly warn: (texts: ReadonlySet<string>) => void;
}

/** The form, empty until notes are shown in it. */
export function trialForm(): TrialForm {
  const about = aboutFields();
  const questions = questionFields();
  const only = sheetField();
  const safety = element("div");
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
    safety,
  );
  let inSheets: ReadonlySet<string> = new Set();
  root.addEventListener("change", follow);
  return {
    root,
    given,
    warn: (texts) => {
      inSheets = texts;
      follow();
    },
    offer: only.offer,
    show: ({ answers, onlySheet, ...rest }) => {
      only.show(onlySheet);
      about.show(rest);
      questions.show(answers);
      follow();
    },
  };

  function given(): TrialNotes {
    return { ...about.given(), answers: questions.given(), onlySheet: only.value() };
  }

  /** What rests on the fields follows them. */
  function follow(): void {
    count.textContent = `${Object.keys(questions.given()).length} of ${trialQuestions.length} answered`;
    const lines = safetyLines([...inSheets, ...notesToSearch(given())]);
    safety.replaceChildren(...(lines.length === 0 ? [] : [section("Safety", paragraphs(lines))]));
  }
}
