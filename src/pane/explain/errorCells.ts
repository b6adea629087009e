import { isErrorCell } from "../../nouns/cell";
import type { CellRange } from "../../nouns/cellRange";
import { counted } from "../../words/counted";
import { addressOf, beyond } from "../address";
import type { Seen } from "./seen";

/** An error cell counts as not recorded; as many as this are named by their place. */
const most = 3;

/** Which cells of an answered call hold error values: "B5 holds #N/A and was left out."; null when none does. */
export function errorCellsText({ asked }: Seen): string | null {
  // PLAINNUMBER leaves none out: it hands each on as an error, and says so itself.
  const isTold = asked.outcome === "answer" && asked.answer.finding.finding === "plain-numbers";
  const found = asked.outcome === "answer" && !isTold ? asked.ranges.flatMap(errorsIn) : [];
  if (found.length === 0) return null;
  const named = found.slice(0, most).map(({ place, error }) => `${place} holds ${error} and was left out.`);
  const rest = found.length - named.length;
  return [...named, ...(rest === 0 ? [] : [`So ${rest === 1 ? "was" : "were"} ${counted(rest, "more error")}.`])].join(
    " ",
  );
}

/** The error cells of a range that stands in a sheet. */
function errorsIn({ cells, corner }: CellRange): readonly { readonly place: string; readonly error: string }[] {
  if (corner === null) return [];
  return cells.flatMap((row, down) =>
    row.flatMap((cell, across) =>
      isErrorCell(cell) ? [{ place: addressOf(beyond(corner, down, across)), error: cell.error }] : [],
    ),
  );
}
