import {
  type TrialAnswer,
  type TrialNotes,
  type TrialQuestion,
  trialAnswers,
  trialQuestions,
} from "../../nouns/trialNotes";
import { cautionLine } from "../../words/caution";
import { trialCautions } from "../../words/trialCautions";
import { answerText, questionText } from "../../words/trialQuestions";
import { freshId } from "../dom/blocks";
import { element } from "../dom/element";

type Answers = TrialNotes["answers"];

/** The questions of the checklist, each with its three answers to choose from. */
export interface QuestionFields {
  readonly root: HTMLElement;
  readonly given: () => Answers;
  /** Marks these answers, and no others. */
  readonly show: (answers: Answers) => void;
}

/** The questions, none of them answered at the start. */
export function questionFields(): QuestionFields {
  const fields = trialQuestions.map(questionField);
  return {
    root: element("div", { class: "questions" }, ...fields.map(({ root }) => root)),
    given: () =>
      Object.fromEntries(
        fields.flatMap(({ question, chosen }) => {
          const answer = chosen();
          return answer === null ? [] : [[question, answer]];
        }),
      ),
    show: (answers) => {
      for (const { question, choose } of fields) choose(answers[question] ?? null);
    },
  };
}

interface QuestionField {
  readonly question: TrialQuestion;
  readonly root: HTMLElement;
  readonly chosen: () => TrialAnswer | null;
  readonly choose: (answer: TrialAnswer | null) => void;
}

function questionField(question: TrialQuestion): QuestionField {
  const name = freshId();
  const inputs = trialAnswers.map((answer) => ({
    answer,
    input: element("input", { type: "radio", name, value: answer }),
  }));
  const warning = element("p", { class: "hint", "aria-live": "polite", hidden: true });
  const root = element(
    "fieldset",
    { onchange: warn },
    element("legend", {}, questionText(question)),
    ...inputs.map(({ answer, input }) => element("label", { class: "answer" }, input, answerText(answer))),
    warning,
  );
  return { question, root, chosen, choose };

  function chosen(): TrialAnswer | null {
    return inputs.find(({ input }) => input.checked)?.answer ?? null;
  }

  function choose(answer: TrialAnswer | null): void {
    for (const one of inputs) one.input.checked = one.answer === answer;
    warn();
  }

  /** What Explain will warn of is said at once, where it can still be mended. */
  function warn(): void {
    const answer = chosen();
    const cautions = answer === null ? [] : trialCautions({ answers: { [question]: answer } });
    warning.textContent = cautions.map((caution) => cautionLine(caution).sentence).join(" ");
    warning.hidden = cautions.length === 0;
  }
}
