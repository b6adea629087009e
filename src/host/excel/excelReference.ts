/** A reference taken apart. */
export interface ExcelReference {
  /** The sheet's name without quotes. */
  readonly sheet: string;
  /** Address, name or table reference on that sheet. */
  readonly range: string;
  /** True for "A1#": all cells that the formula in A1 spills into. */
  readonly spills: boolean;
}

/** A sheet before what lies on it. A table's column may have an exclamation mark in its name, but no sheet before it. */
const qualified = /^('(?:[^']|'')*'|[^'![]+)!(.*)$/s;

/** Takes a reference apart as it stands in a formula; `home` is the sheet of one that names none. */
export function excelReference(reference: string, home: string): ExcelReference {
  const [, prefix, rest = reference] = qualified.exec(reference) ?? [];
  const sheet = prefix === undefined ? home : prefix.replace(/^'(.*)'$/s, "$1").replaceAll("''", "'");
  return { sheet, range: rest.replace(/#$/, ""), spills: rest.endsWith("#") };
}

/** An address without its sheet: "B2:C9" of "'My sheet'!B2:C9". */
export function withoutSheet(address: string): string {
  return address.slice(address.lastIndexOf("!") + 1);
}
