/** One field of a table of text. */
export interface Field {
  readonly text: string;
  /** Whether it stands in quotes, so that it is a text even if it looks like a number. */
  readonly quoted: boolean;
}

/** What parts the fields: the sign that the first line has most of, outside quotes; a comma where it has none. */
export function separatorOf(text: string): string {
  const line = /^(?:"(?:[^"]|"")*"|[^"\r\n])*/.exec(text)?.[0].replaceAll(/"(?:[^"]|"")*"/g, "") ?? "";
  const counts = [",", ";", "\t"].map((sign) => ({ sign, count: line.split(sign).length }));
  return counts.reduce((best, one) => (one.count > best.count ? one : best)).sign;
}

/** The rows of a table of text (RFC 4180), one by one. A quote that is never closed ends with the file. */
export function* csvRows(text: string, separator: string): Generator<readonly Field[]> {
  const field = new RegExp(
    `(?:"((?:[^"]|"")*)(?:"|$)([^${separator}\\r\\n]*)|([^${separator}\\r\\n]*))(${separator}|\\r?\\n|\\r|$)`,
    "y",
  );
  let row: Field[] = [];
  while (field.lastIndex < text.length) {
    const found = field.exec(text);
    if (found === null) break;
    const [, quoted, rest = "", plain = "", end = ""] = found;
    row.push({
      text: quoted === undefined ? plain : quoted.replaceAll('""', '"') + rest,
      quoted: quoted !== undefined,
    });
    if (end === separator) continue;
    yield row;
    row = [];
  }
  if (row.length > 0) yield [...row, { text: "", quoted: false }];
}
