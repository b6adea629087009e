/** What a worksheet function's call comes to in its cell. */
export type Outcome =
  | { readonly cells: unknown }
  /** An error value, with the sentence that Excel shows beside it. */
  | { readonly error: string; readonly sentence: string };

/** The wire's numbers for error values; a plain failure of a function has one of the others. */
const errors: Readonly<Record<number, string>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
};

interface Named {
  readonly id: number;
  readonly value: unknown;
  readonly failed?: boolean;
  readonly errorCode?: number;
}

/** Collects what the page hands back for the calls it was given. */
export function outcomes() {
  const known = new Map<number, Outcome>();
  const waiting = new Map<number, (outcome: Outcome) => void>();
  return {
    /** Takes the argument of SetInvocationResults (records) or of SetInvocationArrayResults (lists). */
    take(results: readonly unknown[]): void {
      for (const result of results) {
        const { id, value, failed = false, errorCode = -1 } = Array.isArray(result) ? named(result) : (result as Named);
        const error = errors[errorCode] ?? `a failure without an error value (${errorCode})`;
        const outcome = failed ? { error, sentence: String(value) } : { cells: value };
        known.set(id, outcome);
        waiting.get(id)?.(outcome);
      }
    },
    of: (call: number) =>
      new Promise<Outcome>((resolve) => {
        const outcome = known.get(call);
        if (outcome === undefined) waiting.set(call, resolve);
        else resolve(outcome);
      }),
  };
}

function named([id, worked, value, errorCode]: readonly unknown[]): Named {
  return { id: Number(id), value, failed: worked !== true, errorCode: Number(errorCode ?? -1) };
}
