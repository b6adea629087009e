import { answeredSoon } from "./answeredSoon";
import { excelTrouble } from "./excelTrouble";

/**
 * Asks Excel something, for no longer than three seconds.
 *
 * @param where the reference or address concerned, for a trouble's sentence
 * @param patience in milliseconds, where Excel has more to do than usual
 * @returns what `work` gives; rejects with a SheetTrouble
 */
export async function inExcel<Found>(
  where: string,
  work: (context: Excel.RequestContext) => Promise<Found>,
  patience?: number,
): Promise<Found> {
  try {
    return await answeredSoon(where, Excel.run(work), patience);
  } catch (reason) {
    throw excelTrouble(reason, where);
  }
}
