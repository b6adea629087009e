/** Joins texts as people do: "a", "a and b", "a, b and c"; an empty list gives "". */
export function listText(items: readonly string[], joint: "and" | "or" = "and"): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} ${joint} ${items.slice(-1).join("")}`;
}
