import { choice, field } from "../dom/blocks";
import { element } from "../dom/element";

/** The choice of the sheet that the notes are about. */
export interface SheetField {
  readonly root: HTMLElement;
  /** "" for the whole workbook. */
  readonly value: () => string;
  /** Chooses a sheet, whether it was offered or not. */
  readonly show: (sheet: string) => void;
  /** Offers these sheets, and the one that is chosen. */
  readonly offer: (sheets: readonly string[]) => void;
}

/** The choice, of the whole workbook at the start. */
export function sheetField(): SheetField {
  const select = choice([{ value: "", text: "The whole workbook" }]);
  const hint = "One sheet, where the workbook holds other trials too.";
  return { root: field("These notes are about", select, hint), value: () => select.value, show, offer };

  function show(sheet: string): void {
    if (![...select.options].some(({ value }) => value === sheet)) select.append(option(sheet));
    select.value = sheet;
  }

  function offer(sheets: readonly string[]): void {
    const chosen = select.value;
    const offered = new Set([...sheets, chosen].filter((sheet) => sheet !== ""));
    select.replaceChildren(...[...select.options].slice(0, 1), ...[...offered].map(option));
    select.value = chosen;
  }
}

function option(sheet: string): HTMLOptionElement {
  return element("option", { value: sheet }, sheet);
}
