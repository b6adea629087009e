import type { Desk } from "../answers/desk";
import type { Sheet } from "../host/sheet";
import type { Comparisons } from "./beside/comparisons";
import type { Store } from "./store";
import type { Watched } from "./watch";

/** What every part of the pane works with. */
export interface Context {
  readonly sheet: Sheet;
  readonly desk: Desk;
  readonly watched: Store<Watched>;
  /** How many comparisons the workbook holds, the one given among them. */
  readonly comparisons: Comparisons;
  /** Looks at the sheet now, without waiting for a change. */
  readonly look: () => Promise<void>;
  /** Lets a screen reader say it when it has nothing else to say. */
  readonly announce: (text: string) => void;
}
