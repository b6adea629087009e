/** One field of a table of text. */
export interface Field {
  readonly text: string;
  /** Whether it stands in quotes, so that it is a text even if it looks like a number. */
  readonly quoted: boolean;
}

/** What may part the fields of a row. */
export type Separator = "," | ";" | "\t";

const separators: readonly Separator[] = [",", ";", "\t"];

/**
 * What parts the fields: the sign that most stand of, outside quotes, in the first line that has any, as a title may
 * stand above the table; a comma where no line has one.
 */
export function separatorOf(text: string): Separator {
  const counts = { ",": 0, ";": 0, "\t": 0 };
  const most = () => separators.reduce((best, one) => (counts[one] > counts[best] ? one : best));
  let quoted = false;
  for (const [sign] of text.matchAll(/["\r\n,;\t]/g)) {
    if (sign === '"') quoted = !quoted;
    else if (quoted) continue;
    else if (sign === "," || sign === ";" || sign === "\t") counts[sign] += 1;
    else if (counts[most()] > 0) break;
  }
  return most();
}

/** The rows of a table of text (RFC 4180), one by one. A quote that is never closed ends with the file. */
export function* csvRows(text: string, separator: Separator): Generator<readonly Field[]> {
  const plain = new RegExp(`([^${separator}\\r\\n]*)(${separator}|\\r?\\n|\\r|$)`, "y");
  let row: Field[] = [];
  let at = 0;
  while (at < text.length) {
    const quoted = text[at] === '"';
    const close = quoted ? closingQuote(text, at + 1) : at;
    plain.lastIndex = quoted ? Math.min(close + 1, text.length) : at;
    const [, rest = "", end = ""] = plain.exec(text) ?? [];
    row.push({ text: quoted ? text.slice(at + 1, close).replaceAll('""', '"') + rest : rest, quoted });
    at = plain.lastIndex;
    if (end === separator) continue;
    yield row;
    row = [];
  }
  if (row.length > 0) yield [...row, { text: "", quoted: false }];
}

/** Where quotes close, the text's end where they never do. A pattern would outgrow the stack in a long field. */
function closingQuote(text: string, from: number): number {
  let at = text.indexOf('"', from);
  while (at >= 0 && text[at + 1] === '"') at = text.indexOf('"', at + 2);
  return at < 0 ? text.length : at;
}
