import { type Cell, isErrorCell } from "../../nouns/cell";
import type { ErrorOutput, LineFormat, Output } from "../../nouns/line";
import type { Seen } from "./seen";

/** Excel shows these while a cell is still being worked out. */
const unfinished: ReadonlySet<string> = new Set(["#BUSY!", "#GETTING_DATA"]);

/**
 * Whether the cell shows what the desk answers now.
 *
 * @returns null when it cannot be told: the call is part of a bigger formula, or the cell is not finished
 */
export function showsAnswer({ formula, call, value, asked }: Seen): boolean | null {
  if (!isWholeFormula(formula, call.text)) return null;
  if (value !== null && isErrorCell(value) && unfinished.has(value.error)) return null;
  if (asked.outcome === "refusal") return value !== null && isErrorCell(value) && value.error === asked.refusal.code;
  return asked.outcome === "answer" ? isEqual(value, asked.answer.cell()[0]?.[0] ?? "") : null;
}

/** How the answer that the cell shows is best formatted; null when it is no figure. */
export function shownFormat({ formula, call, asked }: Seen): LineFormat | null {
  if (asked.outcome !== "answer" || !isWholeFormula(formula, call.text)) return null;
  const [[shown] = []] = asked.answer.cell();
  return typeof shown === "number" ? (asked.answer.formats()[0]?.[0] ?? null) : null;
}

function isWholeFormula(formula: string, call: string): boolean {
  return formula.replace(/^=\s*[+@]?\s*/, "").trim() === call;
}

/** Equal to the digits a spreadsheet keeps. */
function isEqual(shown: Cell, answer: Output | ErrorOutput): boolean {
  if (typeof answer === "object") return shown !== null && isErrorCell(shown) && shown.error === answer.error;
  if (typeof shown !== "number" || typeof answer !== "number") return (shown ?? "") === answer;
  return Math.abs(shown - answer) <= 1e-12 * Math.max(Math.abs(shown), Math.abs(answer));
}
