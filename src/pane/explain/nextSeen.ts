import { findCalls } from "../../formula/findCalls";
import type { Selection } from "../../host/sheet";
import { firstCell, firstSpot } from "../address";
import type { Context } from "../context";
import { type Seen, see, seeAgain, wantedOf, within } from "./seen";

/** What was explained until now, and what the grower has selected since. */
export interface Following {
  readonly seen: Seen | null;
  readonly selection: Selection;
  readonly pinned: boolean;
}

/**
 * The cell to explain after a change in the sheet: the selected one; still the last one when it is pinned and another
 * is selected, or when the grower clicks a cell among its plants.
 *
 * @returns null when the selected cell holds none of our calls
 */
export async function nextSeen({ seen, selection, pinned }: Following, context: Context): Promise<Seen | null> {
  const wanted = wantedOf(selection);
  if (seen === null) return see(wanted, context);
  if (isCellOf(seen, selection)) {
    const isChanged = seen.formula !== selection.formula;
    return see({ ...wanted, pick: isChanged ? 0 : seen.calls.indexOf(seen.call) }, context);
  }
  return pinned || isAmongPlants(seen, selection) ? seeAgain(seen, context) : see(wanted, context);
}

function isCellOf(seen: Seen, { sheet, address }: Selection): boolean {
  return seen.sheet === sheet && seen.address === firstCell(address);
}

function isAmongPlants(seen: Seen, { sheet, address, formula }: Selection): boolean {
  return findCalls(formula).length === 0 && within(seen, sheet, firstSpot(address)) !== null;
}
