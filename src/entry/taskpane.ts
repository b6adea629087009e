import "./page.css";
import type { Desk } from "../answers/desk";
import { excelSheet } from "../host/excel/excelSheet";
import { excelUpkeep } from "../host/excel/excelUpkeep";
import { startPane } from "../pane/pane";
import { keepAsText } from "../pane/upkeep/keepAsText";
import { strangersNote } from "../pane/upkeep/strangersNote";
import { isSameVersion } from "./version";

/** The worksheet functions' script, loaded by the same page, leaves the desk here: so both ask one desk. */
const deskKey = Symbol.for("fairbed.desk");

void Office.onReady(() => {
  const pane = document.querySelector<HTMLElement>("#pane");
  if (pane === null) return;
  const desk = (globalThis as { readonly [deskKey]?: Desk })[deskKey];
  if (desk === undefined) {
    pane.textContent =
      "Fairbed could not start: its worksheet functions are missing. Close this pane and open it again.";
    return;
  }
  const sheet = excelSheet();
  const upkeep = excelUpkeep();
  startPane(pane, sheet, desk);
  pane.prepend(strangersNote(upkeep));
  pane.append(keepAsText(sheet, upkeep));
  if (!isSameVersion()) pane.prepend(otherVersion());
});

function otherVersion(): HTMLElement {
  const note = document.createElement("p");
  note.setAttribute("role", "status");
  note.textContent =
    "The functions and this pane come from different versions of Fairbed. Close Excel and open the workbook again.";
  return note;
}
