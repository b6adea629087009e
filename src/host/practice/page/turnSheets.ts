import type { Grid } from "../grid";

const steps: Readonly<Record<string, number>> = { PageDown: 1, PageUp: -1 };

/** Ctrl+Alt+Page Down and Page Up turn to the next and the previous sheet, as in Excel for the web. */
export function turnSheets(grid: Grid): void {
  window.addEventListener("keydown", (event) => onKey(event, grid), { capture: true });
}

function onKey(event: KeyboardEvent, { book, focus }: Grid): void {
  const step = steps[event.key];
  if (step === undefined || !event.ctrlKey || !event.altKey) return;
  event.preventDefault();
  event.stopPropagation();
  const sheets = book.getSheets().filter((sheet) => !sheet.isSheetHidden());
  const present = sheets.findIndex((sheet) => sheet.getSheetId() === book.getActiveSheet().getSheetId());
  const next = sheets[(present + step + sheets.length) % sheets.length];
  if (next !== undefined) book.setActiveSheet(next);
  focus();
}
