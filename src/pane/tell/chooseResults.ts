import type { Selection } from "../../host/sheet";
import { firstCell } from "../address";
import { folded } from "../dom/blocks";
import { element } from "../dom/element";
import { unbroken } from "../dom/unbroken";
import { type Result, resultLabel } from "./results";

/** The list of the workbook's results, each to be told or not. */
export interface ChooseResults {
  readonly root: HTMLElement;
  /** Shows these; what was chosen before stays chosen, and at first the selected cell's result is, or else the first. */
  readonly offer: (results: readonly Result[], selection: Selection | null) => void;
  readonly chosen: () => readonly Result[];
}

/** @param changed is called when the grower chooses otherwise */
export function chooseResults(changed: () => void): ChooseResults {
  const root = element("div", { class: "choose" });
  let offered: readonly Result[] = [];
  let keys: ReadonlySet<string> | null = null;
  let drawn = "";
  return { root, offer, chosen: () => offered.filter(({ key }) => keys?.has(key)) };

  function offer(results: readonly Result[], selection: Selection | null): void {
    offered = results;
    const first = results.find((one) => isSelected(one, selection)) ?? results[0];
    keys ??= first === undefined ? null : new Set([first.key]);
    // Drawn anew only when it differs, so that the keyboard stays where it is.
    const now = JSON.stringify(results.map((one) => [one.key, resultLabel(one)]));
    if (now !== drawn) root.replaceChildren(...(results.length === 0 ? nothing() : [list()]));
    drawn = now;
  }

  /** Open are those of the chosen result's sheet; those of other sheets are folded. */
  function list(): HTMLElement {
    const home = offered.find(({ key }) => keys?.has(key))?.sheet ?? offered[0]?.sheet;
    const others = offered.filter(({ sheet }) => sheet !== home);
    return element(
      "fieldset",
      {},
      element("legend", {}, "Which results do you want to tell?"),
      ...offered.filter(({ sheet }) => sheet === home).map(row),
      others.length === 0 ? null : folded(`${others.length} more on other sheets`, () => others.map(row)),
    );
  }

  function row(result: Result): HTMLElement {
    const { key, sheet, cells } = result;
    const input = element("input", { type: "checkbox", onchange: () => choose(key, input.checked) });
    input.checked = keys?.has(key) ?? false;
    const where = element("small", {}, `${sheet}, ${cells[0]}`);
    return element("label", { class: "result" }, input, element("span", {}, unbroken(resultLabel(result)), " ", where));
  }

  function choose(key: string, wanted: boolean): void {
    const others = [...(keys ?? [])].filter((other) => other !== key);
    keys = new Set(wanted ? [...others, key] : others);
    changed();
  }
}

function isSelected({ sheet, cells }: Result, selection: Selection | null): boolean {
  return selection !== null && selection.sheet === sheet && cells.includes(firstCell(selection.address));
}

function nothing(): readonly HTMLElement[] {
  return [
    element("p", { class: "finding" }, "There is no result to tell yet."),
    element("p", {}, "Compare two ways of growing first: type the harvest, then use COMPARETWO or COMPAREMANY."),
  ];
}
