import { isProblem, type Problem } from "../nouns/problem";
import { cellText } from "./cellText";
import { type Argument, oneCell } from "./option";
import { readChoice } from "./readChoice";
import { type Unit, unitOf } from "./unit";

/** A unit that amounts can be asked for in; "count" is a number of fruit. */
export type AskedUnit = Unit | "count";

const UNITS: readonly AskedUnit[] = ["g", "kg", "lb", "oz", "count", "ml", "l", "cm", "m", "in", "ft"];

/**
 * The *unit* argument, in any spelling of a unit ("kg", "Kilos", "lbs"), else a Problem that lists the units.
 *
 * @param fallback what an omitted argument or an empty cell gives
 */
export function readUnit<Fallback>(given: Argument, fallback: Fallback): AskedUnit | Fallback | Problem {
  const found = oneCell(given, "unit");
  if (isProblem(found)) return found;
  const spelt = unitOf(cellText(found.cell).trim());
  return spelt ?? readChoice(given, { argument: "unit", allowed: UNITS, fallback });
}
