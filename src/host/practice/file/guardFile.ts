import type { Grid } from "../grid";
import type { OpenFile } from "./openFile";

/** Commands that move cells from their places. */
const moving =
  /^sheet\.command\.(insert-(row|col|multi|range)|remove-(row|col)|move-(rows|cols)|delete-range-move|append-row)/;
/** Commands that do to a sheet what its file cannot follow. */
const onSheets = /^sheet\.command\.(remove-sheet|set-worksheet-name|set-worksheet-hidden)/;
const inOrder = /^sheet\.command\.set-worksheet-order/;

/**
 * Refuses, before it happens, what a copy of the open file could not hold. Sheets that were added here are free.
 *
 * @param file tells which file is open
 * @param refuse shows a sentence
 */
export function guardFile(grid: Grid, file: () => OpenFile, refuse: (sentence: string) => void): void {
  grid.api.addEvent(grid.api.Event.BeforeCommandExecute, (event) => {
    const sentence = refusal(event.id, concerned(grid, event.params), file());
    if (sentence === undefined) return;
    event.cancel = true;
    refuse(sentence);
  });
}

/** Name of the sheet that a command is about: the one it names, else the one that is shown. */
function concerned(grid: Grid, params: unknown): string {
  const named = typeof params === "object" && params !== null && "subUnitId" in params ? params.subUnitId : undefined;
  const sheet = typeof named === "string" ? grid.book.getSheetBySheetId(named) : null;
  return (sheet ?? grid.book.getActiveSheet()).getSheetName();
}

function refusal(command: string, sheet: string, { bytes, book, tied }: OpenFile): string | undefined {
  if (bytes === null || !book.sheets.some(({ name }) => name === sheet)) return undefined;
  if (moving.test(command) && tied.length > 0) {
    return `Cells cannot be moved here: the file has ${tied.join(", ")}, which would no longer fit. Add a sheet for it.`;
  }
  if (onSheets.test(command))
    return "The sheets of an opened file keep their names and stay. Sheets added here are free.";
  return inOrder.test(command) ? "The sheets of an opened file keep their order." : undefined;
}
