import type { Selection } from "../../host/sheet";
import { button } from "../dom/blocks";
import { element } from "../dom/element";

/** What the part shows while there is nothing to look over. */
export interface TableStart {
  readonly root: HTMLElement;
  /** Names the selected cell, whose table can be looked over. */
  readonly follow: (selection: Selection) => void;
  /** Says that nothing stands round that cell. */
  readonly nothing: (selection: Selection) => void;
}

/** @param around is called when the grower wants the table that the selected cell stands in */
export function tableStart(around: (cell: Selection) => void): TableStart {
  const said = element("p", { role: "status" });
  const take = button("", () => cell !== null && around(cell), "main");
  const root = element(
    "div",
    { class: "explanation" },
    element("p", { class: "finding" }, "Check a table before you use it."),
    element("p", {}, "Click into the table, select some cells, or click a cell with a Fairbed formula."),
    take,
    said,
    element("p", { class: "hint" }, "Nothing in your cells is changed. Colours are not looked at."),
  );
  let cell: Selection | null = null;
  take.hidden = true;
  return { root, follow, nothing };

  function follow(selection: Selection): void {
    cell = selection;
    take.hidden = false;
    take.textContent = `Check the table around ${selection.address}`;
    said.textContent = "";
  }

  function nothing({ address }: Selection): void {
    said.textContent = `Nothing stands around ${address}. Click into a table.`;
  }
}
