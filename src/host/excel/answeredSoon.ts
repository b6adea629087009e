import type { SheetTrouble } from "../sheet";

/** Excel that has not answered by then, in milliseconds, is not waited for. */
const usualPatience = 3000;

/** For what reads or writes very many cells, which takes longer, on the web above all; in milliseconds. */
export const patienceForMany = 20_000;

/**
 * What Excel answers, waited for no longer than three seconds: then it rejects with "unreadable".
 *
 * @param where the reference or address concerned, for the trouble's sentence
 * @param patience in milliseconds, where Excel has more to do than usual
 */
export async function answeredSoon<Found>(
  where: string,
  asked: Promise<Found>,
  patience = usualPatience,
): Promise<Found> {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    const trouble: SheetTrouble = { trouble: "unreadable", where };
    waiting = setTimeout(() => reject(trouble), patience);
  });
  try {
    return await Promise.race([asked, late]);
  } finally {
    clearTimeout(waiting);
  }
}
