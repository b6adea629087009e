import type { Desk } from "../../../answers/desk";
import { choice, field } from "../../dom/blocks";
import { element } from "../../dom/element";
import type { LookedAt } from "../lookedAt";
import type { CopyRules } from "./copyOf";
import type { Layout } from "./shape";
import { shapeOf } from "./shapeOf";

/** What the grower says of the table. */
export interface ShapeForm {
  readonly root: HTMLElement;
  readonly rules: () => CopyRules;
}

const layouts: Readonly<Record<Layout, string>> = {
  rows: "one row per pick or per plant",
  "picks-across": "plants down, picking days across",
  "treatments-across": "plants down, treatments across",
};

function chosenLayout(value: string): Layout {
  return value === "picks-across" || value === "treatments-across" ? value : "rows";
}

/**
 * Proposes how the table is laid out and where its headings stand; `changed` is called when the grower says otherwise.
 */
export function shapeForm({ range }: LookedAt, desk: Desk, changed: () => void): ShapeForm {
  const proposed = shapeOf(range.cells, desk);
  const top = range.corner?.row ?? 1;
  const layout = choice(Object.entries(layouts).map(([value, text]) => ({ value, text })));
  layout.value = proposed.layout;
  const last = top + range.cells.length - 1;
  const heading = element("input", { type: "number", min: top, max: last, value: proposed.headingRow + top - 1 });
  const above = element("input", { type: "checkbox", onchange: changed });
  const none = element("input", { type: "checkbox", onchange: changed });
  const noneLine = element("label", { class: "tick" }, none, "An empty cell means that nothing was picked");
  for (const input of [layout, heading]) input.addEventListener("change", follow);
  noneLine.hidden = proposed.layout !== "picks-across";
  return {
    root: element(
      "div",
      {},
      element(
        "div",
        { class: "fields" },
        field("The table holds", layout),
        field("Its headings stand in row", heading),
      ),
      noneLine,
      element("label", { class: "tick" }, above, "An empty date or name means the one above it"),
    ),
    rules,
  };

  function follow(): void {
    noneLine.hidden = layout.value !== "picks-across";
    changed();
  }

  function rules(): CopyRules {
    const row = Math.min(Math.max(Math.floor(Number(heading.value)) || top, top), last) - top + 1;
    const shape = { layout: chosenLayout(layout.value), headingRow: row, blankIsNone: none.checked };
    return { shape, blankIsAbove: above.checked };
  }
}
