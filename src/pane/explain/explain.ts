import type { SheetTrouble } from "../../host/sheet";
import { firstSpot } from "../address";
import type { Context } from "../context";
import { element } from "../dom/element";
import type { Part } from "../dom/tabs";
import { asTrouble, troubleText } from "../trouble";
import { nextSeen } from "./nextSeen";
import { pinBar } from "./pinBar";
import { isAlike, type Seen, see, type Within, within } from "./seen";
import { startView } from "./startView";
import type { View } from "./view";

/** The part of the pane that explains the selected cell. */
export function explainPart(context: Context): Part {
  const stage = explainStage(context);
  const pin = pinBar(() => void follow());
  let turn = 0;
  context.watched.listen(() => void follow());
  return { name: "Explain", root: stage.root, beside: pin.root, open: () => void follow() };

  /** Looks at the sheet anew; of several looks under way only the last one counts. */
  async function follow(): Promise<void> {
    if (stage.root.hidden) return;
    const { selection, trouble } = context.watched.get();
    await settle(async () => {
      if (selection === null || trouble !== null || stage.isHeld()) return stage.seen();
      return nextSeen({ seen: stage.seen(), selection, pinned: pin.isPinned() }, context);
    });
  }

  async function settle(look: () => Promise<Seen | null>): Promise<void> {
    turn += 1;
    const mine = turn;
    const { trouble } = context.watched.get();
    const [next, view, met] = await look()
      .then(async (seen): Promise<Looked> => [seen, seen === null ? null : await viewFor(seen), trouble])
      .catch((reason: unknown): Looked => [stage.seen(), null, asTrouble(reason)]);
    if (mine !== turn) return;
    stage.show(next, view, met);
    pin.show(next);
  }

  /** What explains cells is loaded with the first of them: a pane may stand open for long without one. */
  async function viewFor(seen: Seen): Promise<() => View> {
    const { viewOf } = await import("./viewOf");
    return () => viewOf(seen, context, (call) => void settle(() => see({ ...seen, pick: call }, context)));
  }
}

/** A cell to explain, what makes its view, and what went wrong. */
type Looked = readonly [Seen | null, (() => View) | null, SheetTrouble | null];

/** What the part shows at the moment. */
interface Stage {
  readonly root: HTMLElement;
  readonly seen: () => Seen | null;
  readonly isHeld: () => boolean;
  /** `view` makes the view of `next` where that is not shown yet; null where there is nothing to explain. */
  readonly show: (next: Seen | null, view: (() => View) | null, trouble: SheetTrouble | null) => void;
}

function explainStage(context: Context): Stage {
  const note = element("p", { class: "note" });
  const start = startView(context);
  const root = element("div", {}, note, start.root);
  let seen: Seen | null = null;
  let view: View = start;
  return { root, seen: () => seen, isHeld: () => view.isHeld(), show };

  function show(next: Seen | null, made: (() => View) | null, trouble: SheetTrouble | null): void {
    note.replaceChildren(...(trouble === null ? [] : [troubleText(trouble)]));
    if (!isAlike(next, seen)) {
      seen = next;
      replace(made === null ? start : made());
    }
    view.follow(selectedWithin(next, context));
  }

  function replace(next: View): void {
    view.root.replaceWith(next.root);
    view = next;
    context.announce(next.says);
  }
}

/** Where the selected cell stands among those that an explanation read. */
function selectedWithin(seen: Seen | null, { watched }: Context): Within | null {
  const { selection } = watched.get();
  return seen === null || selection === null ? null : within(seen, selection.sheet, firstSpot(selection.address));
}
