import type { Blankness } from "../blanks";
import { excelReference } from "./excelReference";

/** A range and its used part, both still to be loaded. */
interface Asked {
  readonly whole: Excel.Range;
  readonly used: Excel.Range;
}

/**
 * Asks for the used cells of ranges: the rest of a whole column is not worth its way, and Excel would not send it.
 *
 * @returns what reads the answers, once the context has synced
 */
export function usedCells(context: Excel.RequestContext, addresses: readonly string[]): () => readonly Blankness[] {
  const asked = addresses.map((address) => ask(context, address));
  return () => asked.map(blankness);
}

function ask(context: Excel.RequestContext, address: string): Asked {
  const { sheet, range } = excelReference(address, "");
  const whole = context.workbook.worksheets.getItem(sheet).getRange(range);
  const used = whole.getUsedRangeOrNullObject(true);
  whole.load("rowIndex,columnIndex");
  used.load("rowIndex,columnIndex,valueTypes");
  return { whole, used };
}

function blankness({ whole, used }: Asked): Blankness {
  if (used.isNullObject) return () => "outside";
  const { valueTypes } = used;
  const [down, across] = [whole.rowIndex - used.rowIndex, whole.columnIndex - used.columnIndex];
  return (row, column) => {
    const type = valueTypes[down + row]?.[across + column];
    if (type === undefined) return "outside";
    return type === "Empty" ? "empty" : "filled";
  };
}
