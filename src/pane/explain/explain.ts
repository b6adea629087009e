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
    const outcome = await look()
      .then(async (seen): Promise<Outcome> => ({ seen, trouble, views: seen === null ? null : await views() }))
      .catch((reason: unknown): Outcome => ({ seen: stage.seen(), trouble: asTrouble(reason), views: null }));
    if (mine !== turn) return;
    stage.show(outcome, (seen, call) => void settle(() => see({ ...seen, pick: call }, context)));
    pin.show(outcome.seen);
  }
}

/** What there is to show after a look at the sheet. */
interface Outcome {
  readonly seen: Seen | null;
  /** Why it is not what the grower selected; null when it is. */
  readonly trouble: SheetTrouble | null;
  /** Null where nothing new is to be explained. */
  readonly views: typeof import("./viewOf") | null;
}

/** The explanations are fetched with the first of them, so that the pane itself loads at once. */
function views(): Promise<typeof import("./viewOf")> {
  return import("./viewOf").catch(() => {
    const notFetched: SheetTrouble = { trouble: "unreadable", where: "The explanation" };
    throw notFetched;
  });
}

/** What the part shows at the moment. */
interface Stage {
  readonly root: HTMLElement;
  readonly seen: () => Seen | null;
  readonly isHeld: () => boolean;
  readonly show: (outcome: Outcome, pick: (seen: Seen, call: number) => void) => void;
}

function explainStage(context: Context): Stage {
  const note = element("p", { class: "note" });
  const start = startView(context);
  const root = element("div", {}, note, start.root);
  let seen: Seen | null = null;
  let view: View = start;
  return { root, seen: () => seen, isHeld: () => view.isHeld(), show };

  function show({ seen: next, trouble, views }: Outcome, pick: (seen: Seen, call: number) => void): void {
    note.replaceChildren(...(trouble === null ? [] : [troubleText(trouble)]));
    if (!isAlike(next, seen)) {
      seen = next;
      replace(next === null || views === null ? start : views.viewOf(next, context, (call) => pick(next, call)));
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
