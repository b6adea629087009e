import "./tell.css";
import type { Context } from "../context";
import { debounced } from "../debounced";
import { element } from "../dom/element";
import { asTrouble, troubleText } from "../trouble";
import { chooseResults } from "./chooseResults";
import { reportFor } from "./reportFor";
import { reportView } from "./reportView";
import { type AskedCall, askedCalls, resultsOf } from "./results";
import { sheetPart } from "./sheetPart";
import { tellForm } from "./tellForm";

/** Typing or changing cells is over when nothing happened for so many milliseconds. */
const pause = 400;

/**
 * Fills the part Tell: which results, title and question, and below them the report as a sheet, in three lengths and as
 * a picture.
 *
 * @returns looks for the workbook's results; to be called whenever the part is opened
 */
export function tell(context: Context, root: HTMLElement): () => void {
  const note = element("p", { class: "note" });
  const choice = chooseResults(() => void settle(show));
  const form = tellForm(debounced(() => void settle(show), pause));
  const sheets = sheetPart(context);
  const view = element("div", { class: "explanation" });
  let calls: readonly AskedCall[] = [];
  let turn = 0;
  root.replaceChildren(note, choice.root, form.root, sheets.root, view);
  // New formulas are looked for when the part is opened: that reads the whole workbook.
  context.sheet.onChange(
    debounced(() => {
      if (!root.hidden) void settle(answer);
    }, pause),
  );
  return () => void settle(look);

  async function look(mine: number): Promise<void> {
    calls = await askedCalls(context);
    await sheets.look();
    await answer(mine);
  }

  async function answer(mine: number): Promise<void> {
    const results = await resultsOf(calls, context);
    if (mine !== turn) return;
    choice.offer(results, context.watched.get().selection);
    await show(mine);
  }

  async function show(mine: number): Promise<void> {
    const chosen = choice.chosen();
    const report = chosen.length === 0 ? null : await reportFor(chosen, form, context);
    if (mine !== turn) return;
    form.root.hidden = report === null;
    sheets.follow(report);
    view.replaceChildren(...(report === null ? [] : reportView(report, chosen, context)));
  }

  /** Of several works under way only the last one shows; a spreadsheet that does not answer is told of. */
  async function settle(work: (mine: number) => Promise<void>): Promise<void> {
    turn += 1;
    const mine = turn;
    const met = await work(mine).then(
      () => "",
      (reason: unknown) => troubleText(asTrouble(reason)),
    );
    if (mine === turn) note.textContent = met;
  }
}
