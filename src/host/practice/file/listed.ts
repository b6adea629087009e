const most = 5;

/** The first few of a list, and how many more there are: "A1, A2 and 3 more". */
export function listed(items: readonly string[]): string {
  const shown = items.slice(0, most).join(", ");
  return items.length <= most ? shown : `${shown} and ${items.length - most} more`;
}
