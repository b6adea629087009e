/** What a refused call throws or returns: an error with the code that the cell shows. */
export interface Refusal extends Error {
  readonly code: string;
}

/** Told by its shape: the stand-in's error class belongs to another script than the grid's. */
export function isRefusal(value: unknown): value is Refusal {
  return value instanceof Error && "code" in value && typeof value.code === "string";
}

/**
 * The sentences of refused calls, by cell and function: "'The trial'!H3 UPDOWN". For people who debug the page;
 * the pane works its sentences out itself.
 */
export const refusals = new Map<string, string>();
