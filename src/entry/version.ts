declare global {
  /** Put in by the build: "0.1.0+3fa9c2d1". */
  const FAIRBED_VERSION: string;
}

const versionKey = Symbol.for("fairbed.version");
const session = globalThis as { [versionKey]?: string };

/** The functions' script leaves its version here for the pane, which is a script of its own. */
export function leaveVersion(): void {
  session[versionKey] = FAIRBED_VERSION;
}

/** Whether the functions on this page were built together with the script that asks. */
export function isSameVersion(): boolean {
  return session[versionKey] === FAIRBED_VERSION;
}
