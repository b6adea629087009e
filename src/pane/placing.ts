import { quotedSheet } from "../formula/quoted";
import type { Entry } from "../host/sheet";
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
  let chosen: { readonly target: Target; readonly entries: readonly Entry[] } | null = null;
  refresh();
  return { root, refresh };

  function refresh(): void {
    const target = targetOf(context);
    const entries = target === null ? "Click the cell in the sheet where it should go." : order.entries(target);
    chosen = target === null || typeof entries === "string" ? null : { target, entries };
    goesTo.textContent =
      typeof entries === "string" ? entries : `Goes to ${placeName(target)}. Click another cell to change that.`;
    preview.textContent = chosen?.entries.map(({ content }) => content).join("\n") ?? "";
    preview.hidden = chosen === null;
    put.disabled = chosen === null;
    ask(false);
  }

  function ask(sure: boolean): void {
    const asked = confirm.contains(document.activeElement);
    put.hidden = sure;
    confirm.hidden = !sure;
    if (sure) replace.focus();
    else if (asked) put.focus();
  }

  async function write(over: boolean): Promise<void> {
    if (chosen === null) return;
    const { target, entries } = chosen;
    try {
      await context.sheet.write(entries, over);
      refresh();
      order.done(target);
      await context.look();
    } catch (reason) {
      const trouble = asTrouble(reason);
      ask(trouble.trouble === "not-empty");
      goesTo.textContent =
        trouble.trouble === "not-empty" ? `${troubleText(trouble)} Replace it?` : troubleText(trouble);
      context.announce(goesTo.textContent);
    }
  }
}

function targetOf({ watched }: Context): Target | null {
  const { selection } = watched.get();
  return selection === null ? null : { sheet: selection.sheet, address: firstCell(selection.address) };
}

function placeName(target: Target | null): string {
  return target === null ? "" : `${quotedSheet(target.sheet)}!${target.address}`;
}
