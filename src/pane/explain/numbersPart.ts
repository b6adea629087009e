import type { Answer } from "../../answers/desk";
import { quoted } from "../../formula/quoted";
import { seenFrom } from "../../formula/seenFrom";
import { withArgument } from "../../formula/withArgument";
import type { Entry } from "../../host/sheet";
import type { Line } from "../../nouns/line";
import type { Context } from "../context";
import { folded, freshId } from "../dom/blocks";
import { type Child, element } from "../dom/element";
import { unbroken } from "../dom/unbroken";
import { figureLines } from "../figureLines";
import { cellFormat, lineText } from "../figures";
import { type Placing, placing, type Target } from "../placing";
import { mayHold, type Seen } from "./seen";

/** The folded list of all figures. */
export interface NumbersPart {
  readonly root: HTMLElement;
  /** True while a figure is chosen and waits for its cell. */
  readonly isHeld: () => boolean;
  readonly refresh: () => void;
}

/** All the figures of an answer; one chosen can be put into a cell as a formula of its own. */
export function numbersPart(seen: Seen, answer: Answer, context: Context): NumbersPart {
  let chosen: Line | null = null;
  const place: Placing = placing(context, { entries: (target) => entriesOf(seen, chosen, { target, context }), done });
  place.root.hidden = true;
  const rows = element("fieldset", {}, element("legend", {}, "Choose one to put it into a cell."));
  rows.addEventListener("keydown", (event) => {
    if (event.key === "Escape") choose(null);
  });
  const root = folded("All the numbers", () => {
    const name = freshId();
    rows.append(...figureLines(answer).map((line) => row(line, name, () => choose(line))));
    return [worthwhileNote(answer), rows, place.root];
  });
  root.addEventListener("toggle", () => {
    if (!root.open) choose(null);
  });
  return { root, isHeld: () => chosen !== null, refresh: place.refresh };

  function choose(line: Line | null): void {
    chosen = line;
    place.root.hidden = line === null;
    if (line === null) for (const input of rows.querySelectorAll("input")) input.checked = false;
    place.refresh();
  }

  function done({ address }: Target): void {
    context.announce(`${chosen?.label ?? "The figure"} is in ${address} now.`);
    choose(null);
    root.querySelector("summary")?.focus();
  }
}

function row({ label, format, value }: Line, name: string, choose: () => void): HTMLElement {
  const shown = unbroken(lineText(value(), format));
  const long = shown.length > 24 && "long";
  const input = element("input", { type: "radio", name, onchange: choose });
  return element("label", { class: "line" }, input, element("span", {}, label), element("b", { class: long }, shown));
}

/** What goes into the chosen cell: the same call with another *show*. */
function entriesOf(
  seen: Seen,
  line: Line | null,
  { target, context }: { readonly target: Target; readonly context: Context },
): readonly Entry[] | string {
  if (line === null || !mayHold(seen, target)) {
    return "Click the cell in the sheet where it should go.";
  }
  const show = context.desk.parameters(seen.call.id)?.findIndex(({ name }) => name === "show") ?? -1;
  const formula = withArgument(seen.call, show, quoted(line.label));
  return [{ ...target, content: seenFrom(formula, seen.sheet, target.sheet), format: cellFormat(line) }];
}

function worthwhileNote({ finding }: Answer): Child {
  const taken = "worthwhile" in finding && !finding.worthwhile.given;
  return taken ? element("p", { class: "hint" }, "Worthwhile is taken as 10 %.") : null;
}
