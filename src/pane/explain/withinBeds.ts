import { seenFrom } from "../../formula/seenFrom";
import { cautionLine } from "../../words/caution";
import type { Context } from "../context";
import { button, paragraphs, section } from "../dom/blocks";
import type { Child } from "../dom/element";
import { type Placing, placing } from "../placing";
import { mayHold, type Seen } from "./seen";

/** The offer to compare within the beds that stand beside a comparison. */
export interface WithinBeds {
  readonly root: Child;
  /** True while it waits for the cell where its formula is to go. */
  readonly isHeld: () => boolean;
  readonly refresh: () => void;
}

const counts = cautionLine({ caution: "C11" }).sentence;
const anew =
  "Several plants of a treatment stand in one bed. Put one plant in a row, with its bed and treatment beside it, and ask COMPAREMANY.";

/**
 * That the comparison within beds is the one that counts, and the formula that compares within beds, to be put into a
 * cell; a sentence where the sheet must be laid out anew.
 */
export function withinBeds(seen: Seen, context: Context): WithinBeds {
  const { withinBeds: formula, laysOutAnew } = seen.around;
  const idle = { isHeld: () => false, refresh: () => {} };
  if (laysOutAnew) return { root: section("Within beds", paragraphs([counts, anew])), ...idle };
  if (formula === null) return { root: null, ...idle };
  let held = false;
  const place: Placing = placing(context, {
    entries: (target) => {
      if (!mayHold(seen, target)) return "Click the cell in the sheet where it should go.";
      return [{ ...target, content: seenFrom(formula, seen.sheet, target.sheet), format: "General" }];
    },
    done: ({ address }) => {
      context.announce(`The comparison within beds is in ${address} now.`);
      hold(false);
    },
  });
  const offer = button("Compare within beds", () => hold(!held), "small");
  place.root.hidden = true;
  offer.setAttribute("aria-expanded", "false");
  return {
    root: section("Within beds", [...paragraphs([counts]), place.root], offer),
    isHeld: () => held,
    refresh: place.refresh,
  };

  function hold(is: boolean): void {
    held = is;
    place.root.hidden = !is;
    offer.setAttribute("aria-expanded", String(is));
    place.refresh();
  }
}
