import type { Entry } from "../nouns/sample";

/** Whether an entry is an empty cell, which says nothing of a plant where the cells beside it are empty as well. */
export function isBlank(entry: Entry): boolean {
  return entry.kind === "not-recorded" && entry.why === "empty";
}
