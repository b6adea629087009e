import "./check.css";
import type { Selection } from "../../host/sheet";
import { lookedOverText } from "../../words/lookedOver";
import { firstSpot } from "../address";
import type { Context } from "../context";
import { debounced } from "../debounced";
import { element } from "../dom/element";
import { asTrouble, troubleText } from "../trouble";
import { type CheckView, checkView } from "./checkView";
import { isCheckable, type LookedAt, lookedAt } from "./lookedAt";
import { startView } from "./startView";
import { tableAround } from "./tableAround";

/** Typing or moving is over when nothing happened for so many milliseconds. */
const pause = 150;

/** What is being checked, and what was found. */
interface Checked {
  readonly source: Selection;
  readonly looked: readonly LookedAt[];
  readonly view: CheckView;
}

/**
 * Fills the part Check: what in the selected cells, or in those that the selected formula reads, needs a look before
 * they are used. It looks on while cells change and while the grower goes from one to another, and changes none.
 *
 * @returns looks at the selection; to be called whenever the part is opened
 */
export function check(context: Context, root: HTMLElement): () => void {
  const note = element("p", { class: "note" });
  const start = startView((cell) => void around(cell));
  let checked: Checked | null = null;
  let turn = 0;
  root.replaceChildren(note, start.root);
  context.watched.listen(debounced(() => void follow(), pause));
  return () => void follow();

  async function follow(): Promise<void> {
    const { selection, trouble } = context.watched.get();
    note.textContent = trouble === null ? "" : troubleText(trouble);
    if (root.hidden || selection === null || trouble !== null) return;
    await settle(checked !== null && isAmong(selection, checked) ? checked.source : selection, selection);
  }

  /** Of several looks under way only the last one shows. */
  async function settle(source: Selection, selection: Selection): Promise<void> {
    turn += 1;
    const mine = turn;
    const show = await look(source).then(
      (looked) => () => draw(source, looked, selection),
      (reason: unknown) => () => say(reason),
    );
    if (mine === turn) show();
  }

  /** Looks at the table that a cell stands in, as if it had been selected whole. */
  async function around(cell: Selection): Promise<void> {
    try {
      const address = await tableAround(cell, context.sheet);
      if (address === null) start.nothing(cell);
      else await settle({ ...cell, address, formula: "" }, cell);
    } catch (reason) {
      say(reason);
    }
  }

  async function look(source: Selection): Promise<readonly LookedAt[]> {
    return isCheckable(source) ? lookedAt(source, context) : [];
  }

  function say(reason: unknown): void {
    note.textContent = troubleText(asTrouble(reason));
  }

  function draw(source: Selection, looked: readonly LookedAt[], selection: Selection): void {
    if (looked.length === 0) {
      checked = null;
      start.follow(selection);
      root.replaceChildren(note, start.root);
    } else if (checked === null || !isAlike(looked, checked.looked)) {
      // drawn anew only when it differs, so that the keyboard stays where it is
      const view = checkView(looked, context);
      checked = { source, looked, view };
      root.replaceChildren(note, view.root);
      context.announce(looked.map(({ found }) => `${lookedOverText(found)}.`).join(" "));
    } else checked = { ...checked, source };
    checked?.view.light(selection);
  }
}

/** One selected cell among those that were checked: the grower is looking at what was found. */
function isAmong({ sheet, address }: Selection, { looked }: Checked): boolean {
  if (address.includes(":")) return false;
  const { row, column } = firstSpot(address);
  return looked.some(({ range: { corner, cells } }) => {
    if (corner === null || corner.sheet !== sheet) return false;
    return cells[row - corner.row]?.[column - corner.column] !== undefined;
  });
}

function isAlike(one: readonly LookedAt[], other: readonly LookedAt[]): boolean {
  return keyOf(one) === keyOf(other);
}

function keyOf(looked: readonly LookedAt[]): string {
  return JSON.stringify(
    looked.map(({ formula, found: { cells, numbers, readings } }) => [formula, cells, numbers, readings]),
  );
}
