import type { Selection } from "../../host/sheet";
import { lookedOverText } from "../../words/lookedOver";
import { explainLookedOver } from "../../words/lookedOverExplained";
import { firstCell } from "../address";
import type { Context } from "../context";
import { folded, section } from "../dom/blocks";
import { copyButton } from "../dom/copyButton";
import { type Child, element } from "../dom/element";
import { type Group, groupsOf, type Line } from "./groups";
import type { LookedAt } from "./lookedAt";

/** So many lines of a kind stand open, and so many more in a fold: who mends those sees the rest. */
const open = 8;
const most = 300;

/** What was found, on the page. */
export interface CheckView {
  readonly root: HTMLElement;
  /** Marks the lines of the selected cell. */
  readonly light: (selection: Selection) => void;
}

/** How many cells were read and what of them needs a look; choosing a line selects its cell. */
export function checkView(looked: readonly LookedAt[], context: Context): CheckView {
  const root = element("div", { class: "explanation" }, ...looked.flatMap((one) => blockView(one, context)));
  return { root, light };

  function light({ sheet, address }: Selection): void {
    const here = placeKey(sheet, firstCell(address));
    for (const line of root.querySelectorAll("button.look")) {
      if (line.getAttribute("data-place") === here) line.setAttribute("aria-current", "true");
      else line.removeAttribute("aria-current");
    }
  }
}

function blockView(looked: LookedAt, context: Context): readonly Child[] {
  const { found, reference, formula } = looked;
  const groups = groupsOf(found);
  const { compared, next } = explainLookedOver(found);
  const certain = groups.filter(({ needsLook }) => !needsLook);
  const show = (group: Group) => groupView(group, looked, context);
  const inCell = element("code", { class: "preview" }, formula);
  return [
    element("p", { class: "finding" }, `${lookedOverText(found)}.`),
    element("p", { class: "compared" }, `${reference}. ${compared}`),
    ...groups.filter(({ needsLook }) => needsLook).map(show),
    certain.length === 0 ? null : folded("Read for certain", () => certain.map(show)),
    section("Next", [element("p", {}, next.join(" "))]),
    section("The same in a cell", [inCell], copyButton(formula, context)),
  ];
}

function groupView({ heading, lines }: Group, looked: LookedAt, context: Context): HTMLElement {
  const first = lines.slice(0, open);
  const rest = lines.slice(open, open + most);
  const beyond = lines.length - open - rest.length;
  const fold = folded(`${lines.length - open} more`, () => [
    lineList(rest, looked, context),
    beyond > 0 ? element("p", { class: "hint" }, `${beyond} more show once these are mended.`) : null,
  ]);
  return section(heading, [lineList(first, looked, context), rest.length === 0 ? null : fold]);
}

function lineList(lines: readonly Line[], looked: LookedAt, context: Context): HTMLElement {
  return element(
    "ul",
    { class: "looks" },
    ...lines.map((line) => element("li", {}, lineButton(line, looked, context))),
  );
}

function lineButton({ cell, where, what, advice }: Line, { range }: LookedAt, { sheet }: Context): HTMLElement {
  const home = range.corner?.sheet ?? "";
  return element(
    "button",
    { type: "button", class: "look", "data-place": placeKey(home, cell), onclick: () => void sheet.select(home, cell) },
    element("b", {}, where),
    " ",
    element("span", {}, what),
    " ",
    element("small", {}, advice),
  );
}

function placeKey(sheet: string, address: string): string {
  return `${sheet}!${address}`;
}
