/** A worksheet function's full name in a cell: "UPDOWN" is typed as "FAIRBED.UPDOWN". */
export function gridName(id: string): string {
  return `FAIRBED.${id}`;
}
