import type { Selection } from "../../host/sheet";
import { lookedOverText } from "../../words/lookedOver";
import { explainLookedOver } from "../../words/lookedOverExplained";
import { firstCell } from "../address";
import type { Context } from "../context";
import { folded, section } from "../dom/blocks";
import { copyButton } from "../dom/copyButton";
import { type Child, element } from "../dom/element";
import { goTo } from "../goTo";
import { cleanPart } from "./clean/cleanPart";
import { shapeOf } from "./clean/shapeOf";
import { type Group, groupsOf, type Line } from "./groups";
import type { LookedAt } from "./lookedAt";

/** So many lines of a kind stand open, and so many more in a fold: who mends those sees the rest. */
const open = 8;
const most = 300;
/** Wide tables are small; in larger ones their shape is not looked for. */
const mostForShape = 5000;

/** What was found, on the page. */
export interface CheckView {
  readonly root: HTMLElement;
  /** Marks the lines of the selected cell. */
  readonly light: (selection: Selection) => void;
}

/** What the view needs beside what was found. */
export interface Viewing {
  readonly context: Context;
  /** The cells as they are by now: what was found in them is the same. */
  readonly latest: () => readonly LookedAt[];
  /** Says what was done, whatever the grower looks at by then. */
  readonly told: (sentence: string) => void;
}

/** How many cells were read and what of them needs a look; choosing a line selects its cell. */
export function checkView(looked: readonly LookedAt[], viewing: Viewing): CheckView {
  const { context, latest, told } = viewing;
  const root = element(
    "div",
    { class: "explanation" },
    ...looked.flatMap((one, at) => {
      const copy = () => [cleanPart(() => latest()[at] ?? one, context, told)];
      return blockView(one, copy, context);
    }),
  );
  return { root, light };

  function light({ sheet, address }: Selection): void {
    const here = placeKey(sheet, firstCell(address));
    for (const line of root.querySelectorAll("button.look")) {
      if (line.getAttribute("data-place") === here) line.setAttribute("aria-current", "true");
      else line.removeAttribute("aria-current");
    }
  }
}

function blockView(looked: LookedAt, copy: () => readonly Child[], context: Context): readonly Child[] {
  const { found, reference, formula } = looked;
  const groups = groupsOf(found);
  const { compared, next } = explainLookedOver(found);
  const certain = groups.filter(({ needsLook }) => !needsLook);
  const show = (group: Group) => groupView(group, looked, context);
  const inCell = element("code", { class: "preview" }, formula);
  return [
    element("p", { class: "finding" }, `${lookedOverText(found)}.`),
    element("p", { class: "compared" }, `${reference}. ${compared}`),
    wideNote(looked, context),
    ...groups.filter(({ needsLook }) => needsLook).map(show),
    certain.length === 0 ? null : folded("Read for certain", () => certain.map(show)),
    section("Next", [element("p", {}, next.join(" "))]),
    found.cells === 0 ? null : folded("A clean copy on a new sheet", copy),
    section("The same in a cell", [inCell], copyButton(formula, context)),
  ];
}

/** A wide table is read column by column, as in a cell; its own sense shows in a clean copy. */
function wideNote({ range, found }: LookedAt, { desk }: Context): Child {
  if (found.cells === 0 || found.cells > mostForShape) return null;
  const { layout } = shapeOf(range.cells, desk);
  if (layout === "rows") return null;
  const across = layout === "picks-across" ? "Picking days" : "Treatments";
  return element("p", { class: "note" }, `${across} seem to stand across. A clean copy, below, makes one row of each.`);
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

function lineButton({ cell, where, what, advice }: Line, { range }: LookedAt, context: Context): HTMLElement {
  const sheet = range.corner?.sheet ?? "";
  const onclick = () => goTo({ sheet, address: cell }, context);
  return element(
    "button",
    { type: "button", class: "look", "data-place": placeKey(sheet, cell), onclick },
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
