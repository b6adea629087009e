import type { Report } from "../../nouns/report";
import type { Context } from "../context";
import { button, choice, section } from "../dom/blocks";
import { element } from "../dom/element";
import { today } from "../record/dayNumber";
import { asTrouble, troubleText } from "../trouble";
import { reportSheet } from "./reportSheet";

/** What makes the report a sheet of the workbook. */
export interface SheetPart {
  readonly root: HTMLElement;
  /** Shows this report's buttons; null hides them. */
  readonly follow: (report: Report | null) => void;
  /** Looks which report sheets the workbook has. */
  readonly look: () => Promise<void>;
}

/** The button that makes a report sheet, or writes one of ours anew: which one, the grower sees before pressing it. */
export function sheetPart({ sheet, look: lookAtSheet }: Context): SheetPart {
  const said = element("p", { class: "hint", role: "status" });
  const stage = element("div", {});
  const root = section("Report sheet", [stage, said]);
  let report: Report | null = null;
  let offered = "";
  let isWriting = false;
  root.classList.add("reportSheet");
  root.hidden = true;
  return { root, follow, look };

  function follow(next: Report | null): void {
    report = next;
    root.hidden = next === null;
  }

  async function look(): Promise<void> {
    const names = await sheet.ownSheets();
    // Drawn anew only when it differs, so that the keyboard stays where it is.
    if (offered === JSON.stringify(names)) return;
    offered = JSON.stringify(names);
    stage.replaceChildren(...(names.length === 0 ? toMake(put) : toUpdate(names, put)));
  }

  async function put(over: string | null): Promise<void> {
    if (report === null || isWriting) return;
    isWriting = true;
    said.textContent = "Writing the sheet…";
    try {
      const name = await sheet.putOwn(reportSheet(report, today(new Date())), over);
      await look();
      said.textContent = `Written on the sheet “${name}”.`;
      await lookAtSheet();
    } catch (reason) {
      // What is no trouble of the sheet's is thrown on: a part of the page that did not load.
      said.textContent = "The report was not written. Check the connection, then try once more.";
      said.textContent = `The report was not written. ${troubleText(asTrouble(reason))}`;
    } finally {
      isWriting = false;
    }
  }
}

/** Writes the report, in place of a sheet of ours or on a new one. */
type Put = (over: string | null) => Promise<void>;

function toMake(put: Put): readonly HTMLElement[] {
  return [
    element("p", { class: "hint" }, "The whole report on a sheet of its own, with its table and a chart."),
    button("Make a report sheet", () => void put(null), "main"),
  ];
}

function toUpdate(names: readonly string[], put: Put): readonly HTMLElement[] {
  const which = choice(names.toReversed().map((name) => ({ value: name, text: name })));
  which.setAttribute("aria-label", "Report sheet to update");
  const update = button("Update the report sheet", () => void put(which.value), "main");
  const another = button("Make another", () => void put(null));
  const only = element("p", { class: "hint" }, `It stands on the sheet “${names[0]}”.`);
  return [
    names.length === 1 ? only : which,
    element("div", { class: "buttons" }, update, another),
    element("p", { class: "hint" }, "An update writes that sheet anew: what was typed on it by hand is lost."),
  ];
}
