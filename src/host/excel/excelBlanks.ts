import type { Blankness, ReadBlanks } from "../blanks";
import { answeredSoon } from "./answeredSoon";
import { oneTick } from "./oneTick";
import { usedCells } from "./usedCells";

/**
 * Reads for the worksheet functions which cells are empty. All calls of one recalculation come in one tick, and what
 * is asked in one tick goes to Excel in one batch.
 *
 * Excel that does not answer soon is not waited for: the zeros stay as they came.
 *
 * A reading serves no later tick. Excel may tell of a changed cell after it called the functions again, so a kept
 * reading could be older than the zeros it is asked about, and would take a zero just typed for an empty cell.
 */
export function excelBlanks(): ReadBlanks {
  const ask = oneTick<Blankness>((addresses) => answeredSoon("", readable(addresses)).catch(() => []));
  return (addresses) => (inPage() ? Promise.all(addresses.map(ask)) : null);
}

/** False in a context that runs the functions alone, as the practice sheet does. */
function inPage(): boolean {
  return typeof Excel === "object" && typeof Excel.run === "function";
}

function batch(addresses: readonly string[]): Promise<readonly (Blankness | null)[]> {
  return Excel.run(async (context) => {
    const found = usedCells(context, addresses);
    await context.sync();
    return found();
  });
}

/**
 * Excel refuses a whole batch for one address that it does not know. Asked in halves, that address is found in few
 * batches, where one batch an address would not end in time.
 */
async function readable(addresses: readonly string[]): Promise<readonly (Blankness | null)[]> {
  try {
    return await batch(addresses);
  } catch (reason) {
    if (addresses.length === 1 || isEditing(reason)) return addresses.map(() => null);
    const half = Math.ceil(addresses.length / 2);
    return (await Promise.all([readable(addresses.slice(0, half)), readable(addresses.slice(half))])).flat();
  }
}

/** While a cell is being typed in, Excel answers no question at all. */
function isEditing(reason: unknown): boolean {
  return reason instanceof OfficeExtension.Error && reason.code === "InvalidOperationInCellEditMode";
}
