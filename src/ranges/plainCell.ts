import type { Cell } from "../nouns/cell";
import type { PlainCell } from "../nouns/findings/plainNumbers";
import type { NotPlain, Problem } from "../nouns/problem";
import type { Remark } from "../nouns/reading";
import { bothNumbers } from "./bothNumbers";
import { cellMeaning } from "./cellMeaning";
import { cellText } from "./cellText";
import type { AskedUnit } from "./readUnit";
import { convert } from "./unit";

/** A cell as a plain number, and what had to be done for it; no remark for a plain number. */
export interface PlainReading {
  readonly cell: PlainCell;
  readonly remark: Remark | null;
}

/**
 * Reads one cell into a unit (METHODS 8.12): a number without a unit is taken to be in it, one with another unit of
 * the same kind is converted. Notes, doubtful numbers and units of another kind are refused.
 */
export function plainCell(cell: Cell, unit: AskedUnit): PlainReading {
  const meaning = cellMeaning(cell);
  if (meaning.means === "lost") return { cell: { is: "lost" }, remark: { kind: "lost" } };
  if (meaning.means === "unusable") return unusable(cell, meaning.why);
  const { value, unit: typed, read } = meaning;
  if (typed !== null) return converted(cell, { value, unit: typed }, unit);
  const remark: Remark | null =
    read === "mark-removed" ? { kind: "mark-removed", amount: { value, unit } } : zeroRemark(value, read);
  return { cell: { is: "number", value }, remark };
}

function zeroRemark(value: number, read: "number" | "none-word"): Remark | null {
  if (read === "none-word") return { kind: "none-as-zero" };
  return value === 0 ? { kind: "zero" } : null;
}

function converted(
  cell: Cell,
  typed: { value: number; unit: Exclude<AskedUnit, "count"> },
  unit: AskedUnit,
): PlainReading {
  const value = unit === "count" ? null : convert(typed.value, typed.unit, unit);
  if (value === null) {
    return refused(notPlain(cell, { why: "wrong-unit", unit }), { kind: "unreadable", why: "unit-unclear" });
  }
  return { cell: { is: "number", value }, remark: { kind: "unit-converted", amount: { value, unit } } };
}

type Why = Extract<ReturnType<typeof cellMeaning>, { means: "unusable" }>["why"];

function unusable(cell: Cell, why: Why): PlainReading {
  const problem = notPlain(cell, { why: "unreadable" });
  switch (why) {
    case "empty":
      return { cell: { is: "empty" }, remark: { kind: "not-recorded", why: "empty" } };
    case "doubtful-number":
      return doubtful(cell);
    case "error":
      return refused(problem, { kind: "error" });
    case "true-or-false":
      return refused(problem, { kind: "unreadable", why });
    default:
      return refused(problem, { kind: "unreadable", why: "text" });
  }
}

function doubtful(cell: Cell): PlainReading {
  const numbers = bothNumbers(cellText(cell));
  return refused(notPlain(cell, { why: "doubtful", numbers }), { kind: "unreadable", why: "doubtful-number", numbers });
}

function notPlain(cell: Cell, because: NotPlain): Problem {
  return { problem: "not-plain", given: cellText(cell), because };
}

function refused(problem: Problem, remark: Remark): PlainReading {
  return { cell: { is: "refused", problem }, remark };
}
