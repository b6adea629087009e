import type { Context } from "../context";
import { element } from "../dom/element";
import { type RangePicker, rangePicker, type Taken } from "../rangePicker";
import type { StartQuestion } from "./startQuestions";
import { wholeTable } from "./wholeTable";

/** The fields that take a question's ranges from the sheet, one by one or from a table that is selected whole. */
export interface StartRanges {
  readonly root: HTMLElement;
  readonly taken: () => readonly (Taken | null)[];
  /** Empties the fields, and asks for the ranges of that question. */
  readonly ask: (question: StartQuestion) => void;
  /** To be called when the selection has changed. */
  readonly refresh: () => void;
}

/** @param changed is called when a range was taken */
export function startRanges(context: Context, changed: () => void): StartRanges {
  const hint = element("p", { class: "hint" });
  const pickers = element("div");
  const table = wholeTable(context, (found) => {
    for (const [at, range] of ranges.entries()) range.put(found[at] ?? null);
  });
  let ranges: readonly RangePicker[] = [];
  return {
    root: element("div", {}, hint, table.root, pickers),
    taken: () => ranges.map((one) => one.taken()),
    ask,
    refresh,
  };

  function ask(question: StartQuestion): void {
    ranges = question.ranges.map(({ label }) => rangePicker(label, context, changed));
    pickers.replaceChildren(...ranges.map((range) => range.root));
    hint.textContent = question.asksUsual ? rowsHint : cellsHint;
    table.root.hidden = !question.asksUsual;
    table.clear();
  }

  function refresh(): void {
    for (const range of ranges) range.refresh();
    table.refresh();
  }
}

const cellsHint = "Select the cells in the sheet: one number per plant, the heading too.";
const rowsHint =
  "One row per plant: amount, treatment and bed beside each other. Click a cell of that table, or take each range by itself.";
