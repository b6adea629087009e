const TOLD_APART = Symbol.for("fairbed.blanks");

/**
 * Whether this host hands over an empty cell as something else than 0, so that a zero is a zero.
 *
 * The note stands on globalThis because functions and pane are two bundles in one runtime.
 */
export function blanksToldApart(): boolean {
  return (globalThis as { [TOLD_APART]?: string })[TOLD_APART] === "told apart";
}
