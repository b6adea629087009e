import { quotedSheet } from "../formula/quoted";
import type { Entry, SheetTrouble } from "../host/sheet";
import { firstCell } from "./address";
import type { Context } from "./context";
import { button } from "./dom/blocks";
import { element } from "./dom/element";
import { asTrouble, troubleText } from "./trouble";

/** A cell that the grower chose in the sheet. */
export interface Target {
  readonly sheet: string;
  readonly address: string;
}

/** Something to be put into the sheet. */
export interface Order {
  /** What is to be written when that cell is chosen; a sentence instead says why it cannot be there. */
  readonly entries: (target: Target) => readonly Entry[] | string;
  /** Called after it was written. */
  readonly done: (target: Target) => void;
}

/** The line that says where something goes, what will stand there, and the button that puts it there. */
export interface Placing {
  readonly root: HTMLElement;
  /** To be called when the selection, or what is ordered, has changed. */
  readonly refresh: () => void;
}

/** Puts formulas where the grower clicks, and over filled cells only after asking. */
export function placing(context: Context, order: Order): Placing {
  const goesTo = element("p", { class: "goes-to" });
  const preview = element("code", { class: "preview" });
  const put = button("Put it there", () => void write(false), "main");
  const replace = button("Replace", () => void write(true), "main");
  const keep = button("Keep", refresh);
  const confirm = element("div", { class: "buttons" }, replace, keep);
  const root = element("div", { class: "placing" }, goesTo, preview, put, confirm);
  let chosen: Chosen | null = null;
  let isWriting = false;
  refresh();
  return { root, refresh };

  function refresh(): void {
    const next = chosenNow(order, context);
    if (typeof next === "string") show(null, next);
    else show(next, `Goes to ${placeName(next.target)}. Click another cell to change that.`);
  }

  /** @param sure asks whether to replace what stands there */
  function show(next: Chosen | null, sentence: string, sure = false): void {
    const asked = confirm.contains(document.activeElement);
    chosen = next;
    goesTo.textContent = sentence;
    preview.textContent = next?.entries.map(({ content }) => content).join("\n") ?? "";
    preview.hidden = next === null;
    put.disabled = next === null;
    put.hidden = sure;
    confirm.hidden = !sure;
    if (sure) replace.focus();
    else if (asked) put.focus();
  }

  async function write(over: boolean): Promise<void> {
    if (chosen === null || isWriting) return;
    const wanted = chosen;
    isWriting = true;
    try {
      await context.sheet.write(wanted.entries, over);
      refresh();
      order.done(wanted.target);
      await context.look();
    } catch (reason) {
      // What could not be written is asked about, and it alone replaced, wherever the grower has clicked by then.
      const { isFilled, sentence } = refusalOf(asTrouble(reason));
      show(wanted, sentence, isFilled);
      context.announce(sentence);
    } finally {
      isWriting = false;
    }
  }
}

/** What is written where when the button is pressed. */
interface Chosen {
  readonly target: Target;
  readonly entries: readonly Entry[];
}

/** A sentence says why nothing can be written. */
function chosenNow(order: Order, { watched }: Context): Chosen | string {
  const { selection } = watched.get();
  if (selection === null) return "Click the cell in the sheet where it should go.";
  const target = { sheet: selection.sheet, address: firstCell(selection.address) };
  const entries = order.entries(target);
  return typeof entries === "string" ? entries : { target, entries };
}

function refusalOf(trouble: SheetTrouble): { readonly isFilled: boolean; readonly sentence: string } {
  const isFilled = trouble.trouble === "not-empty";
  return { isFilled, sentence: `${troubleText(trouble)}${isFilled ? " Replace it?" : ""}` };
}

function placeName({ sheet, address }: Target): string {
  return `${quotedSheet(sheet)}!${address}`;
}
