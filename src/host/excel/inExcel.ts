import type { SheetTrouble } from "../sheet";
import { excelTrouble } from "./excelTrouble";

/** Excel that has not answered by then, in milliseconds, is not waited for. */
const patience = 3000;

/**
 * Asks Excel something, for no longer than three seconds.
 *
 * @param where the reference or address concerned, for a trouble's sentence
 * @returns what `work` gives; rejects with a SheetTrouble
 */
export async function inExcel<Found>(
  where: string,
  work: (context: Excel.RequestContext) => Promise<Found>,
): Promise<Found> {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    const trouble: SheetTrouble = { trouble: "unreadable", where };
    waiting = setTimeout(() => reject(trouble), patience);
  });
  try {
    return await Promise.race([Excel.run(work), late]);
  } catch (reason) {
    throw excelTrouble(reason, where);
  } finally {
    clearTimeout(waiting);
  }
}
