/** Joins sentences with a space; empty ones leave no trace. */
export function sentences(...parts: readonly string[]): string {
  return parts.filter((part) => part !== "").join(" ");
}
