import "./check.css";
import type { Selection } from "../../host/sheet";
import type { Context } from "../context";
import { debounced } from "../debounced";
import { asTrouble, troubleText } from "../trouble";
import { checkStage } from "./checkStage";
import { isCheckable, lookedAt } from "./lookedAt";
import { tableAround } from "./tableAround";

/** Typing or moving is over when nothing happened for so many milliseconds. */
const pause = 150;

/**
 * Fills the part Check: what in the selected cells, or in those that the selected formula reads, needs a look before
 * they are used. It looks on while cells change and while the grower goes from one to another, and changes none.
 *
 * @returns looks at the selection; to be called whenever the part is opened
 */
export function check(context: Context, root: HTMLElement): () => void {
  const stage = checkStage(context, root, (cell) => void settle(() => around(cell)));
  let turn = 0;
  context.watched.listen(debounced(() => void follow(), pause));
  return () => void follow();

  async function follow(): Promise<void> {
    const { selection, trouble } = context.watched.get();
    if (root.hidden) return;
    stage.say(trouble === null ? "" : troubleText(trouble));
    if (selection !== null && trouble === null)
      await settle(() => look(stage.sourceOf(selection) ?? selection, selection));
  }

  async function look(source: Selection, selection: Selection): Promise<() => void> {
    const looked = isCheckable(source) ? await lookedAt(source, context) : [];
    return () => stage.show(source, looked, selection);
  }

  /** Looks at the table that a cell stands in, as if it had been selected whole. */
  async function around(cell: Selection): Promise<() => void> {
    const address = await tableAround(cell, context.sheet);
    return address === null ? () => stage.nothing(cell) : look({ ...cell, address, formula: "" }, cell);
  }

  /** Of several looks under way only the last one shows. */
  async function settle(work: () => Promise<() => void>): Promise<void> {
    turn += 1;
    const mine = turn;
    const show = await work().catch((reason: unknown) => {
      const sentence = troubleText(asTrouble(reason));
      return () => stage.say(sentence);
    });
    if (mine === turn) show();
  }
}
