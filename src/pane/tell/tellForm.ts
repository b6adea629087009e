import type { Report, Telling } from "../../nouns/report";
import { field, folded } from "../dom/blocks";
import { element } from "../dom/element";
import type { Planned } from "./plannedOn";

/** Title, question and draw number: what stands in no formula. */
export interface TellForm {
  readonly root: HTMLElement;
  /** What the grower typed, and what the plan says where nothing was typed. */
  readonly given: (planned: Planned) => Pick<Telling, "title" | "question" | "drawNumber">;
  /** Shows in the empty fields what is taken without them. */
  readonly hint: (planned: Planned, report: Report) => void;
}

/** @param changed is called while the grower types */
export function tellForm(changed: () => void): TellForm {
  const title = element("input", { oninput: changed });
  const question = element("input", { oninput: changed });
  const draw = element("input", { type: "number", min: 1, step: 1, inputmode: "numeric", oninput: changed });
  const root = folded("Title, question, draw number", () => [
    field("Title", title, "Left empty, it is made from the results."),
    field("Question", question),
    field("Draw number of the plan", draw),
  ]);
  return { root, given, hint };

  function given(planned: Planned): Pick<Telling, "title" | "question" | "drawNumber"> {
    const number = Number(draw.value);
    return {
      title: title.value.trim(),
      question: question.value.trim() || planned.question,
      drawNumber: Number.isInteger(number) && number > 0 ? number : planned.drawNumber,
    };
  }

  function hint(planned: Planned, report: Report): void {
    title.placeholder = report.title;
    question.placeholder = report.question;
    draw.placeholder = planned.drawNumber === null ? "" : String(planned.drawNumber);
  }
}
