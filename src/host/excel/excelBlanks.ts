import type { Blankness, ReadBlanks } from "../blanks";
import { oneTick } from "./oneTick";
import { usedCells } from "./usedCells";

/** Excel that has not answered by then, in milliseconds, is not waited for: the zeros stay as they came. */
const patience = 3000;

/**
 * Reads for the worksheet functions which cells are empty. All calls of one recalculation come in one tick, and what
 * is asked in one tick goes to Excel in one batch.
 *
 * A reading serves no later tick. Excel may tell of a changed cell after it called the functions again, so a kept
 * reading could be older than the zeros it is asked about, and would take a zero just typed for an empty cell.
 */
export function excelBlanks(): ReadBlanks {
  const ask = oneTick((addresses) => inTime(batch(addresses).catch(() => oneByOne(addresses))));
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

/** Excel refuses a whole batch for one address that it does not know. */
function oneByOne(addresses: readonly string[]): Promise<readonly (Blankness | null)[]> {
  const alone = async (address: string) => (await batch([address]))[0] ?? null;
  return Promise.all(addresses.map((address) => alone(address).catch(() => null)));
}

/** What is found, or nothing when it takes too long. */
async function inTime<Found>(finding: Promise<readonly Found[]>): Promise<readonly Found[]> {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<readonly Found[]>((resolve) => {
    waiting = setTimeout(() => resolve([]), patience);
  });
  const found = await Promise.race([finding, late]);
  clearTimeout(waiting);
  return found;
}
