import { isProblem, type Problem } from "../nouns/problem";
import { cellText } from "../ranges/cellText";
import { type Argument, oneCell } from "../ranges/option";

/** The *show* argument as typed; null when it is left out. Which words it may be, each function says itself. */
export function readShow(given: Argument): string | null | Problem {
  const read = oneCell(given, "show");
  if (isProblem(read)) return read;
  return read.cell === null ? null : cellText(read.cell);
}
