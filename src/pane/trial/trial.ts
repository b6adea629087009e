import "./trial.css";
import type { Context } from "../context";
import { debounced } from "../debounced";
import { element } from "../dom/element";
import { asTrouble, troubleText } from "../trouble";
import { keptLine } from "./keptLine";
import { searched } from "./searched";
import { trialForm } from "./trialForm";

/** Typing is over when nothing was typed for so many milliseconds. */
const pause = 400;

/**
 * Fills the part Trial: what the trial is about, and the questions of its checklist. What is typed is kept with the
 * workbook as it is typed; there is nothing to press.
 *
 * @returns reads what is kept; to be called whenever the part is opened
 */
export function trial({ sheet, watched }: Pick<Context, "sheet" | "watched">, root: HTMLElement): () => void {
  const form = trialForm();
  const line = keptLine(() => void keep());
  const rested = debounced(() => void keep(), pause);
  // Fields hold something that the workbook does not: reading it anew would undo what was typed.
  let ahead = false;
  let inputs = 0;
  let keeping: Promise<void> = Promise.resolve();
  root.replaceChildren(
    element("p", {}, "What your numbers cannot tell by themselves. Explain and Tell use it."),
    form.root,
    line.root,
  );
  form.root.addEventListener("input", () => {
    ahead = true;
    inputs += 1;
    rested();
  });
  // An answer that was chosen, or a field that was left, waits for nothing. A field that was typed in and left as it
  // was before has not changed to the browser.
  for (const event of ["change", "focusout"]) form.root.addEventListener(event, () => void keep());
  watched.listen(() => {
    if (!root.hidden) void look();
  });
  return () => void look().then(search);

  async function search(): Promise<void> {
    const { sheets, texts } = await searched(sheet);
    const { selection } = watched.get();
    form.offer(selection === null ? sheets : [selection.sheet, ...sheets]);
    form.warn(texts);
  }

  async function look(): Promise<void> {
    await keeping;
    const before = inputs;
    const notes = await sheet.notes();
    if (!ahead && inputs === before) form.show(notes);
  }

  /** Keeps what stands in the fields, after what was given before it. */
  function keep(): Promise<void> {
    if (ahead) keeping = keeping.then(put, put);
    ahead = false;
    return keeping;
  }

  async function put(): Promise<void> {
    try {
      await sheet.keepNotes(form.given());
      line.kept();
    } catch (reason) {
      ahead = true;
      line.failed(troubleText(asTrouble(reason)));
    }
  }
}
