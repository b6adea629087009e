import type { Context } from "../context";
import { button } from "../dom/blocks";
import { type Child, element } from "../dom/element";
import { asTrouble, troubleText } from "../trouble";
import { errorCellsText } from "./errorCells";
import type { Seen } from "./seen";
import { shownFormat, showsAnswer } from "./shown";

/** Milliseconds. */
const patience = 1000;

/** What is to be said about the cell and those it reads: errors among them, its format, that it is out of date. */
export function notes(seen: Seen, context: Context): readonly Child[] {
  const errors = errorCellsText(seen);
  const note = errors === null ? [] : [element("p", { class: "note" }, errors)];
  return [...note, ...cellNotes(seen, context)];
}

function cellNotes(seen: Seen, context: Context): readonly Child[] {
  if (showsAnswer(seen) === false) {
    return [lateNote("The cell shows another answer. Recalculate the sheet.")];
  }
  if (seen.numberFormat !== "General" || shownFormat(seen) !== "percent") return [];
  const show = button("Show as %", () => void formatted(), "small");
  const note = element("div", { class: "note" }, element("span", {}, "The cell shows a fraction."), show);
  return [note];

  async function formatted(): Promise<void> {
    try {
      await context.sheet.format(seen.sheet, seen.address, "0.0%");
      note.remove();
      context.announce("The cell now shows a percent.");
    } catch (reason) {
      note.textContent = troubleText(asTrouble(reason));
      context.announce(note.textContent);
    }
  }
}

/** Spreadsheets hand in our results some time after the cells they rest on: only what stays different is told. */
function lateNote(text: string): HTMLElement {
  const note = element("p", { class: "note", hidden: true }, text);
  setTimeout(() => {
    note.hidden = false;
  }, patience);
  return note;
}
