import { quotedSheet } from "../formula/quoted";
import type { Context } from "./context";
import { button, freshId } from "./dom/blocks";
import { element } from "./dom/element";

/** A range that the grower selected. */
export interface Taken {
  readonly sheet: string;
  readonly address: string;
}

/** A field that is filled from the sheet's selection. */
export interface RangePicker {
  readonly root: HTMLElement;
  readonly taken: () => Taken | null;
  /** To be called when the selection has changed. */
  readonly refresh: () => void;
  /** Takes a range that was found for the grower; null for none. */
  readonly put: (range: Taken | null) => void;
}

/** The field with its label, what was taken, and the button that takes what is selected now. */
export function rangePicker(label: string, context: Context, changed: () => void): RangePicker {
  let taken: Taken | null = null;
  const held = element("output", { id: freshId() });
  const take = button("", () => pick(selected()));
  const root = element("div", { class: "field taken" }, element("label", { for: held.id }, label), held, take);
  refresh();
  return { root, taken: () => taken, refresh, put: pick };

  function selected(): Taken | null {
    const { selection } = context.watched.get();
    return selection === null ? null : { sheet: selection.sheet, address: selection.address };
  }

  function pick(next: Taken | null): void {
    taken = next;
    refresh();
    changed();
  }

  function refresh(): void {
    const now = selected();
    held.textContent = taken === null ? "not chosen" : taken.address;
    take.textContent = now === null ? "Select the cells" : `Take ${now.address}`;
    take.disabled = now === null;
  }
}

/** The range as it is typed into a formula on that sheet. */
export function referenceFrom({ sheet, address }: Taken, there: string): string {
  return sheet === there ? address : `${quotedSheet(sheet)}!${address}`;
}
