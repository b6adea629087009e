import type { Book, BookCell, Look } from "../../../files/book";
import { type Cell, isErrorCell } from "../../../nouns/cell";

/** A formula's cell in the three states that matter. */
interface States {
  /** As the file had it. */
  readonly file: BookCell | undefined;
  /** As the grid worked it out when the file was opened. */
  readonly first: BookCell | undefined;
  readonly now: BookCell;
}

type Comparison = (first: BookCell, now: BookCell) => boolean;

/**
 * The present workbook, in which a formula whose result has not changed since its file was opened keeps the file's
 * own result: two spreadsheets may differ in a last digit, and a copy should differ only where the grower changed it.
 * It keeps the file's own look as well, unless that was changed: our answers bring a number format with them, which
 * the grid puts into the cell, and Excel does not.
 */
export function keptResults(file: Book, first: Book, now: Book): Book {
  const sameLook: Comparison = (one, other) => lookText(first.looks, one) === lookText(now.looks, other);
  const sheets = now.sheets.map((sheet) => {
    const [ofFile, ofFirst] = [file, first].map((book) => book.sheets.find(({ name }) => name === sheet.name)?.rows);
    const rows = [...sheet.rows].map(([row, cells]) => {
      const kept = [...cells].map(([column, cell]) => {
        const at = (of: typeof ofFile) => of?.get(row)?.get(column);
        return [column, keptCell({ file: at(ofFile), first: at(ofFirst), now: cell }, sameLook)] as const;
      });
      return [row, new Map(kept)] as const;
    });
    return { ...sheet, rows: new Map(rows) };
  });
  return { ...now, sheets };
}

/** Looks are told apart by their content: each reading of the grid gives new ones their places anew. */
function lookText(looks: readonly Look[], { look = 0 }: BookCell): string {
  return JSON.stringify(looks[look] ?? {});
}

function keptCell({ file, first, now }: States, sameLook: Comparison): BookCell {
  if (now.formula === undefined || file?.formula === undefined || first === undefined) return now;
  if (file.formula !== first.formula || first.formula !== now.formula) return now;
  const { look: _, ...bare } = now;
  const looking = sameLook(first, now) ? withLook(bare, file.look) : now;
  if (!sameResult(first, now) || isErrorCell(file.value)) return looking;
  const { spill: __, ...own } = looking;
  return { ...own, value: file.value, ...(file.spill === undefined ? {} : { spill: file.spill }) };
}

function withLook(cell: BookCell, look: number | undefined): BookCell {
  return look === undefined ? cell : { ...cell, look };
}

function sameResult(one: BookCell, other: BookCell): boolean {
  const [values, others] = [one.spill?.flat() ?? [one.value], other.spill?.flat() ?? [other.value]];
  return values.length === others.length && values.every((value, at) => sameValue(value, others[at] ?? null));
}

function sameValue(one: Cell, other: Cell): boolean {
  return isErrorCell(one) && isErrorCell(other) ? one.error === other.error : one === other;
}
