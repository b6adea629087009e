import "./page.css";
import type { Desk } from "../answers/desk";
import { excelSheet } from "../host/excel/excelSheet";
import { startPane } from "../pane/pane";

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
  startPane(pane, excelSheet(), desk);
});
