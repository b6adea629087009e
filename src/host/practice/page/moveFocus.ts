/** The two halves of the page between which the keyboard moves. */
export interface Halves {
  readonly pane: HTMLElement;
  /** Gives the keyboard to the cells. */
  focusGrid(): void;
}

/**
 * F6 moves between the cells and the pane, because Tab never leaves the cells; Escape leads back from the pane,
 * unless something in the pane has taken it for itself.
 */
export function moveFocus(halves: Halves): void {
  window.addEventListener("keydown", (event) => onF6(event, halves), { capture: true });
  halves.pane.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && !event.defaultPrevented) halves.focusGrid();
  });
}

/** Heard before the grid hears it, which keeps every key for itself. */
function onF6(event: KeyboardEvent, { pane, focusGrid }: Halves): void {
  if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
  event.preventDefault();
  event.stopPropagation();
  if (pane.contains(document.activeElement)) focusGrid();
  else pane.focus();
}
