import type { Call } from "../../formula/call";
import { findCalls } from "../../formula/findCalls";
import type { Sheet } from "../../host/sheet";

/** Counts the comparisons that a workbook holds. */
export type Comparisons = (call: Call, home: string) => Promise<number>;

const comparing: ReadonlySet<string> = new Set(["COMPARETWO", "COMPAREMANY"]);

/**
 * Counts the different plants that the workbook's formulas compare: the same ranges asked for another figure, or in
 * another way, are one comparison. The workbook is searched when a comparison is explained that was not there before,
 * as searching a large one takes long; other formulas changed since then are counted at the next search.
 */
export function comparisons(sheet: Sheet): Comparisons {
  let known: ReadonlySet<string> = new Set();
  return async (call, home) => {
    if (!known.has(keyOf(call, home))) {
      const formulas = await sheet.calls();
      known = new Set(
        formulas.flatMap((cell) =>
          findCalls(cell.formula)
            .filter(({ id }) => comparing.has(id))
            .map((found) => keyOf(found, cell.sheet)),
        ),
      );
    }
    return known.size;
  };
}

/** Ranges without a sheet's name are those of the formula's own sheet. */
function keyOf({ id, arguments: given }: Call, home: string): string {
  const ranges = given.slice(0, 2).map(({ text }) => (text.includes("!") ? text : `${home}!${text}`));
  return [id, ...ranges].join(" ").replaceAll("$", "").toUpperCase();
}
