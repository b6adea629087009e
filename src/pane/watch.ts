import type { Selection, Sheet, SheetTrouble } from "../host/sheet";
import { type Store, store } from "./store";
import { asTrouble } from "./trouble";

/** What the pane knows of the sheet at the moment. */
export interface Watched {
  /** The last selection that could be read; null until there is one. */
  readonly selection: Selection | null;
  /** Why the present selection cannot be read; null when it can. */
  readonly trouble: SheetTrouble | null;
}

/** The sheet as it is followed. */
export interface Watch {
  readonly watched: Store<Watched>;
  /** Looks at the sheet now, without waiting for a change. */
  readonly look: () => Promise<void>;
}

/** Follows the sheet: after every change its selection is read anew, and only the newest reading counts. */
export function watch(sheet: Sheet): Watch {
  const state = store<Watched>({ selection: null, trouble: null });
  let turn = 0;
  sheet.onChange(() => void look());
  void look();
  return { watched: state, look };

  async function look(): Promise<void> {
    turn += 1;
    const mine = turn;
    const seen = await sheet.selection().then(
      (selection) => ({ selection, trouble: null }),
      (reason: unknown) => ({ trouble: asTrouble(reason) }),
    );
    if (mine === turn) state.set(seen);
  }
}
