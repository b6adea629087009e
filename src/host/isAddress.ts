const column = String.raw`\$?[a-z]{1,3}`;
const row = String.raw`\$?[1-9]\d*`;
const address = new RegExp(`^(?:${column}${row}(?::${column}${row})?|${column}:${column}|${row}:${row})$`, "i");

/** Whether a reference without its sheet is an address ("B2", "$B$2:C9", "B:B", "2:4"), and no name or table's column. */
export function isAddress(reference: string): boolean {
  return address.test(reference);
}
