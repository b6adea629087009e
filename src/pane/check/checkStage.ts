import type { Selection } from "../../host/sheet";
import { lookedOverText } from "../../words/lookedOver";
import { firstSpot } from "../address";
import type { Context } from "../context";
import { element } from "../dom/element";
import { type CheckView, checkView } from "./checkView";
import type { LookedAt } from "./lookedAt";
import { tableStart } from "./tableStart";

/** What the part shows at the moment. */
export interface CheckStage {
  /** The selection that is being checked, if the selected cell is one of those; else null. */
  readonly sourceOf: (selection: Selection) => Selection | null;
  readonly show: (source: Selection, looked: readonly LookedAt[], selection: Selection) => void;
  /** Says that no table stands round that cell. */
  readonly nothing: (cell: Selection) => void;
  /** Says what is in the way; "" when nothing is. */
  readonly say: (sentence: string) => void;
}

/** What is being checked, and what was found. */
interface Checked {
  readonly source: Selection;
  readonly looked: readonly LookedAt[];
  readonly view: CheckView;
}

/** @param around is called when the grower wants the table that the selected cell stands in */
export function checkStage(context: Context, root: HTMLElement, around: (cell: Selection) => void): CheckStage {
  const done = element("p", { class: "note", role: "status" });
  const note = element("p", { class: "note" });
  const start = tableStart(around);
  let checked: Checked | null = null;
  root.replaceChildren(done, note, start.root);
  return {
    sourceOf: (selection) => (checked !== null && isAmong(selection, checked.looked) ? checked.source : null),
    show,
    nothing: start.nothing,
    say: (sentence) => note.replaceChildren(sentence),
  };

  function show(source: Selection, looked: readonly LookedAt[], selection: Selection): void {
    if (looked.length === 0) {
      checked = null;
      start.follow(selection);
      root.replaceChildren(done, note, start.root);
      return;
    }
    // drawn anew only when it differs, so that the keyboard stays where it is
    const isSame = checked !== null && keyOf(looked) === keyOf(checked.looked);
    checked = { source, looked, view: isSame && checked !== null ? checked.view : drawn(looked) };
    checked.view.light(selection);
  }

  function drawn(looked: readonly LookedAt[]): CheckView {
    done.textContent = "";
    const view = checkView(looked, { context, latest: () => checked?.looked ?? looked, told });
    root.replaceChildren(done, note, view.root);
    context.announce(looked.map(({ found }) => `${lookedOverText(found)}.`).join(" "));
    return view;
  }

  function told(sentence: string): void {
    done.textContent = sentence;
  }
}

/** One selected cell among those that were checked: the grower is looking at what was found. */
function isAmong({ sheet, address }: Selection, looked: readonly LookedAt[]): boolean {
  if (address.includes(":")) return false;
  const { row, column } = firstSpot(address);
  return looked.some(({ range: { corner, cells } }) => {
    if (corner === null || corner.sheet !== sheet) return false;
    return cells[row - corner.row]?.[column - corner.column] !== undefined;
  });
}

function keyOf(looked: readonly LookedAt[]): string {
  return JSON.stringify(
    looked.map(({ formula, found: { cells, numbers, readings } }) => [formula, cells, numbers, readings]),
  );
}
