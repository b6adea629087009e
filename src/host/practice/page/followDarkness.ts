import type { Grid } from "../grid";

const darkness = "(prefers-color-scheme: dark)";

/** Whether the reader's computer asks for dark pages. */
export function isDark(): boolean {
  return window.matchMedia(darkness).matches;
}

/** Lets the spreadsheet follow when the reader's computer turns dark or light. */
export function followDarkness(grid: Grid): void {
  window.matchMedia(darkness).addEventListener("change", ({ matches }) => grid.api.toggleDarkMode(matches));
}
