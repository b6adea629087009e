import { type Cell, isEmpty } from "../nouns/cell";
import type { Unusable } from "../nouns/sample";
import { isLostWord } from "./isLostWord";
import { isNoneWord } from "./isNoneWord";
import { readAmount } from "./readAmount";
import type { Unit } from "./unit";

/** What one cell of an amounts column says by itself, before the column's unit is known. */
export type CellMeaning =
  | {
      readonly means: "amount";
      readonly value: number;
      readonly unit: Unit | null;
      readonly read: "number" | "mark-removed" | "none-word";
    }
  | { readonly means: "lost" }
  | { readonly means: "unusable"; readonly why: Unusable };

/** Reads one cell by METHODS 4.1. A number that is not finite is an error; a doubtful text number is not used. */
export function cellMeaning(cell: Cell): CellMeaning {
  if (isEmpty(cell)) return { means: "unusable", why: "empty" };
  if (typeof cell === "boolean") return { means: "unusable", why: "true-or-false" };
  if (typeof cell === "string") return textMeaning(cell);
  if (typeof cell === "number" && Number.isFinite(cell)) return amount(cell, null, "number");
  return { means: "unusable", why: "error" };
}

/** Reads many cells; a text that comes again, as a season's log has few and often, is read once. */
export function cellMeanings(cells: readonly Cell[]): readonly CellMeaning[] {
  const known = new Map<Cell, CellMeaning>();
  return cells.map((cell) => {
    const meaning = known.get(cell) ?? cellMeaning(cell);
    known.set(cell, meaning);
    return meaning;
  });
}

function textMeaning(text: string): CellMeaning {
  if (isNoneWord(text)) return amount(0, null, "none-word");
  if (isLostWord(text)) return { means: "lost" };
  const said = readAmount(text);
  if (said.amount === "unreadable") return { means: "unusable", why: "text" };
  if (said.doubtful) return { means: "unusable", why: "doubtful-number" };
  return amount(said.value, said.unit, said.marked ? "mark-removed" : "number");
}

function amount(value: number, unit: Unit | null, read: "number" | "mark-removed" | "none-word"): CellMeaning {
  return { means: "amount", value: value === 0 ? 0 : value, unit, read };
}
