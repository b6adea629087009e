import type { AmountTerm } from "./amountTerm";
import { type Numeral, readNumeral } from "./readNumeral";
import { convert, type Unit } from "./unit";

/** The sum of an amount's terms, in the first unit named. */
export interface AmountSum {
  readonly value: number;
  readonly unit: Unit | null;
  readonly marked: boolean;
  readonly doubtful: boolean;
  readonly otherwise: number | null;
}

/** With these, three decimals are usual and thousands are not: "0,726 kg", "1,250 kg". */
const BIG_UNITS: ReadonlySet<Unit | null> = new Set<Unit | null>(["kg", "lb", "l", "m"]);

/**
 * Adds the terms of "2+1", "200+310 g", "1 lb 4 oz".
 *
 * Either every term has a unit, or none has, or the last one's holds for all. The smaller part of a compound must
 * be of a smaller unit ("200 g 310 g" are two weights). Null when they cannot be added, or do not make a finite sum.
 */
export function addTerms(terms: readonly AmountTerm[]): AmountSum | null {
  const units = sharedUnits(terms);
  const unit = units?.[0] ?? null;
  if (units === null || !compoundsFall(terms) || (terms.length > 1 && terms.some((term) => term.negative))) return null;
  const parts = terms.map((term, at) => readPart(term, units[at] ?? null, unit));
  if (!parts.every((part) => part !== null)) return null;
  const value = total(parts.map((part) => part.value));
  if (!Number.isFinite(value)) return null;
  const other = total(parts.map((part) => part.otherwise ?? part.value));
  return {
    value,
    unit,
    marked: terms.some((term) => term.fraction > 0) || parts.some((part) => !part.plain) || isSum(terms),
    doubtful: parts.some((part) => part.doubtful),
    otherwise: parts.some((part) => part.otherwise !== null) ? other : null,
  };
}

function sharedUnits(terms: readonly AmountTerm[]): readonly (Unit | null)[] | null {
  const last = terms.at(-1)?.unit ?? null;
  const before = terms.slice(0, -1);
  if (before.every((term) => term.unit === null)) return terms.map(() => last);
  return terms.every((term) => term.unit !== null) ? terms.map((term) => term.unit) : null;
}

/** Each smaller part of a compound is of a smaller unit than the term before it. */
function compoundsFall(terms: readonly AmountTerm[]): boolean {
  return terms.every(({ compound, unit }, at) => {
    const before = terms[at - 1]?.unit;
    if (!compound || !before) return true;
    const share = unit === null ? null : convert(1, unit, before);
    return share !== null && share < 1;
  });
}

/** One term's number, converted into the unit of the sum. */
function readPart(term: AmountTerm, from: Unit | null, to: Unit | null): Numeral | null {
  const numeral = readNumeral(term.digits === "" ? "0" : term.digits, BIG_UNITS.has(from));
  if (numeral === null) return null;
  const inSum = (amount: number): number | null => {
    const signed = (term.negative ? -1 : 1) * (amount + term.fraction);
    return from === null || to === null ? signed : convert(signed, from, to);
  };
  const value = inSum(numeral.value);
  const otherwise = numeral.otherwise === null ? null : inSum(numeral.otherwise);
  return value === null ? null : { ...numeral, value, otherwise };
}

function isSum(terms: readonly AmountTerm[]): boolean {
  return terms.slice(1).some((term) => !term.compound);
}

function total(amounts: readonly number[]): number {
  return amounts.reduce((sum, amount) => sum + amount, 0);
}
