import type { Book, BookCell } from "../../../files/book";
import { type Cell, isErrorCell } from "../../../nouns/cell";

/** A formula's cell in the three states that matter. */
interface States {
  /** As the file had it. */
  readonly file: BookCell | undefined;
  /** As the grid worked it out when the file was opened. */
  readonly first: BookCell | undefined;
  readonly now: BookCell;
}

/**
 * The present workbook, in which a formula whose result has not changed since its file was opened keeps the file's
 * own result: two spreadsheets may differ in a last digit, and a copy should differ only where the grower changed it.
 */
export function keptResults(file: Book, first: Book, now: Book): Book {
  const sheets = now.sheets.map((sheet) => {
    const [ofFile, ofFirst] = [file, first].map((book) => book.sheets.find(({ name }) => name === sheet.name)?.rows);
    const rows = [...sheet.rows].map(([row, cells]) => {
      const kept = [...cells].map(([column, cell]) => {
        const at = (of: typeof ofFile) => of?.get(row)?.get(column);
        return [column, keptCell({ file: at(ofFile), first: at(ofFirst), now: cell })] as const;
      });
      return [row, new Map(kept)] as const;
    });
    return { ...sheet, rows: new Map(rows) };
  });
  return { ...now, sheets };
}

function keptCell({ file, first, now }: States): BookCell {
  if (now.formula === undefined || file === undefined || first === undefined) return now;
  const unchanged = file.formula === first.formula && first.formula === now.formula && sameResult(first, now);
  if (!unchanged || isErrorCell(file.value)) return now;
  const { spill: _, ...own } = now;
  return { ...own, value: file.value, ...(file.spill === undefined ? {} : { spill: file.spill }) };
}

function sameResult(one: BookCell, other: BookCell): boolean {
  const [values, others] = [one.spill?.flat() ?? [one.value], other.spill?.flat() ?? [other.value]];
  return values.length === others.length && values.every((value, at) => sameValue(value, others[at] ?? null));
}

function sameValue(one: Cell, other: Cell): boolean {
  return isErrorCell(one) && isErrorCell(other) ? one.error === other.error : one === other;
}
