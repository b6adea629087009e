/** A text as it is typed into a formula: in double quotes, those inside doubled. */
export function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}

/** A sheet's name as it stands before the "!" of a reference: in quotes unless it is plain letters and digits. */
export function quotedSheet(name: string): string {
  const plain = /^\p{L}[\p{L}\p{N}_]*$/u.test(name) && !/^[a-z]{1,3}\d*$/i.test(name) && !/^r\d*c\d*$/i.test(name);
  return plain ? name : `'${name.replaceAll("'", "''")}'`;
}
