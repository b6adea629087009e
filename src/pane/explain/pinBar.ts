import { button } from "../dom/blocks";
import { element } from "../dom/element";
import type { Seen } from "./seen";

/** The name of the explained cell and the button that keeps its explanation. */
export interface PinBar {
  readonly root: HTMLElement;
  readonly isPinned: () => boolean;
  /** Names the cell; with none there is nothing to keep any more. */
  readonly show: (seen: Seen | null) => void;
}

/** @param released is called when the explanation is no longer to be kept */
export function pinBar(released: () => void): PinBar {
  const cell = element("span", { class: "cell" });
  const pin = button("Keep", toggle, "small");
  pin.title = "Keep this explanation while you click elsewhere";
  pin.setAttribute("aria-label", pin.title);
  const root = element("div", { class: "pin" }, cell, pin);
  let pinned = false;
  mark();
  return { root, isPinned: () => pinned, show };

  function toggle(): void {
    pinned = !pinned;
    mark();
    if (!pinned) released();
  }

  function mark(): void {
    pin.setAttribute("aria-pressed", String(pinned));
  }

  function show(seen: Seen | null): void {
    cell.textContent = seen?.address ?? "";
    pin.hidden = seen === null;
    if (seen !== null) return;
    pinned = false;
    mark();
  }
}
