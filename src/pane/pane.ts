import "./pane.css";
import "./dom/controls.css";
import "./explain/explanation.css";
import "./plots/pictures.css";
import type { Desk } from "../answers/desk";
import type { Sheet } from "../host/sheet";
import { comparisons } from "./beside/comparisons";
import type { Context } from "./context";
import { element } from "./dom/element";
import { tabs } from "./dom/tabs";
import { explainPart } from "./explain/explain";
import { laterPart } from "./laterPart";
import { watch } from "./watch";

/**
 * Starts the pane in `root`: its parts in the order of a season, Explain open. From then on it follows the sheet.
 *
 * @param root an empty element of the page; the pane owns all that is in it
 * @param sheet the spreadsheet, asked through the port only
 * @param desk answers the calls that stand in the cells
 */
export function startPane(root: HTMLElement, sheet: Sheet, desk: Desk): void {
  const live = element("p", { class: "unseen", "aria-live": "polite" });
  const announce = (text: string) => live.replaceChildren(text);
  const context: Context = { sheet, desk, ...watch(sheet), comparisons: comparisons(sheet), announce };
  const plan = laterPart("Plan", (part) => import("./plan/plan").then((loaded) => loaded.plan(context, part)));
  const trial = laterPart("Trial", (part) => import("./trial/trial").then((loaded) => loaded.trial(context, part)));
  const check = laterPart("Check", (part) => import("./check/check").then((loaded) => loaded.check(context, part)));
  const tell = laterPart("Tell", (part) => import("./tell/tell").then((loaded) => loaded.tell(context, part)));
  const explain = explainPart(context);
  const parts = [plan, trial, check, explain, tell];
  root.classList.add("fairbed");
  root.replaceChildren(...tabs(parts, parts.indexOf(explain)), live);
  followTheme(root, sheet);
}

function followTheme(root: HTMLElement, sheet: Sheet): void {
  const follow = () => {
    root.setAttribute("data-theme", sheet.theme().dark ? "dark" : "light");
  };
  follow();
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", follow);
  sheet.onChange(follow);
}
