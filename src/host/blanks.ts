const TOLD_APART = Symbol.for("fairbed.blanks");

/** The note stands on globalThis because functions and pane are two bundles in one runtime. */
const session = globalThis as { [TOLD_APART]?: string };

/** What the sheet says of one cell of a range, counted from the range's first cell: "outside" of all used cells. */
export type Blankness = (row: number, column: number) => "empty" | "filled" | "outside";

/**
 * Reads which cells of the sheet are empty; the spreadsheet's own file answers.
 *
 * @param addresses as the host names its arguments: "'My sheet'!B2:B9", "Trial!B:B"
 * @returns in the same order, null for an address that cannot be read. Never rejects, and settles within seconds. Null
 *   in place of the promise: there is no spreadsheet to ask.
 */
export type ReadBlanks = (addresses: readonly string[]) => Promise<readonly (Blankness | null)[]> | null;

let reader: ReadBlanks = () => null;

/** Names who reads the sheet for the worksheet functions. */
export function readBlanksWith(chosen: ReadBlanks): void {
  reader = chosen;
}

/** Asks the sheet which cells are empty, as `ReadBlanks` says. */
export const readBlanks: ReadBlanks = (addresses) => reader(addresses);

/** Whether this host hands over an empty cell as something else than 0, so that a zero is a zero. */
export function blanksToldApart(): boolean {
  return session[TOLD_APART] === "told apart";
}

/** Notes for the rest of the session that this host tells empty cells from zeros. */
export function noteBlanksToldApart(): void {
  session[TOLD_APART] = "told apart";
}
