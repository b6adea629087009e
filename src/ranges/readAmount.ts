import { addTerms } from "./addTerms";
import { type AmountTerm, readTerm } from "./amountTerm";
import { type AmountToken, amountTokens } from "./amountTokens";
import { FRACTIONS } from "./ordinaryText";
import type { Unit } from "./unit";

/** What a text in a number cell says. */
export type AmountText =
  | {
      readonly amount: "read";
      /** The number in `unit`, or bare. */
      readonly value: number;
      /** The unit typed beside it; the first one of a compound such as "1 lb 4 oz". */
      readonly unit: Unit | null;
      /** True when more than plain digits was read: a mark, a word, a sum, a fraction, a comma. */
      readonly marked: boolean;
      /** True when it may as well be `otherwise`: "1,250" is 1250 or 1.25. */
      readonly doubtful: boolean;
      /** The other possible reading, for sentences; null where there is none. */
      readonly otherwise: number | null;
    }
  | { readonly amount: "unreadable" };

/** Without a digit or a fraction there is no number; most names have none, which spares them the reading. */
const NUMERIC = new RegExp(`[0-9\\uFF10-\\uFF19${Object.keys(FRACTIONS).join("")}]`);

const UNREADABLE: AmountText = { amount: "unreadable" };
const LEADING_MARKS = new Set(["~", "≈", "*", "?", "†", "‡"]);
const TRAILING_MARKS = new Set([...LEADING_MARKS, "!", "#", ".", ",", ";", ":", "…", "(", ")", "[", "]"]);
const ROUND_WORDS = new Set([
  "about",
  "approx",
  "approximately",
  "around",
  "c",
  "ca",
  "circa",
  "est",
  "estimate",
  "estimated",
  "nearly",
  "roughly",
]);

/**
 * Reads a text as an amount: a number with or without a unit ("177 g", "1 lb 4 oz", "2½ lb"), with a mark or word
 * round it ("506*", "~3", "approx 179", "12?"), with commas or points (see `readNumeral`), or a sum ("2+1").
 *
 * Unreadable are notes, dates, ranges ("10-12"), bare slashes ("3/2"), two numbers in one cell ("2 (1 split)",
 * "3 120"), percents, units it does not know. Time grows with the text's length only.
 */
export function readAmount(text: string): AmountText {
  const tokens = NUMERIC.test(text) ? amountTokens(text) : null;
  if (tokens === null) return UNREADABLE;
  const from = tokens.findIndex((token) => !isRound(token, LEADING_MARKS));
  const terms = readTerms(tokens, from);
  const sum = terms && addTerms(terms.terms);
  if (!terms || !sum || !tokens.slice(terms.end).every((token) => isRound(token, TRAILING_MARKS))) return UNREADABLE;
  const marked = sum.marked || from > 0 || terms.end < tokens.length;
  return { amount: "read", ...sum, marked };
}

/** A mark or a word that says "roughly" and does not change the number. */
function isRound({ token, text }: AmountToken, marks: ReadonlySet<string>): boolean {
  return token === "word" ? ROUND_WORDS.has(text.toLowerCase().replace(".", "")) : marks.has(text);
}

/** The terms from a token on, and where they end; null when the first is none. */
function readTerms(
  tokens: readonly AmountToken[],
  from: number,
): { readonly terms: readonly AmountTerm[]; readonly end: number } | null {
  const first = readTerm(tokens, from);
  if (first === null) return null;
  const terms = [first];
  let end = first.end;
  for (let next = nextTerm(tokens, first); next !== null; next = nextTerm(tokens, next)) {
    terms.push(next);
    end = next.end;
  }
  return { terms, end };
}

/** The term that follows another, after "+" or as the smaller unit of a compound ("1 lb 4 oz", "1 lb, 4 oz"). */
function nextTerm(tokens: readonly AmountToken[], before: AmountTerm): AmountTerm | null {
  const joiner = tokens[before.end];
  if (joiner?.text === "+") return readTerm(tokens, before.end + 1);
  if (before.unit === null) return null;
  const joined = joiner !== undefined && [",", "&", "and"].includes(joiner.text);
  const term = readTerm(tokens, before.end + (joined ? 1 : 0));
  return term && { ...term, compound: true };
}
