import { FRACTIONS, ordinaryText } from "./ordinaryText";

/** A piece of an amount's text. `spaced` says that a space stands before it. */
export interface AmountToken {
  readonly token: "number" | "fraction" | "word" | "sign";
  readonly text: string;
  readonly spaced: boolean;
}

/** No amount is written longer than this; it keeps the reading of very long texts cheap. */
const LONGEST = 200;

/**
 * A number with its inner marks, one fraction character, a word with its full stop, or any other character.
 * No part can match one text in two ways, so the time grows with the text's length only.
 */
const PIECE = new RegExp(
  [
    String.raw`([.,]?\d(?:[.,]?\d|['\u00A0](?=\d{3}(?!\d))\d)*)`,
    `([${Object.keys(FRACTIONS).join("")}])`,
    String.raw`(\p{L}+\.?)`,
    String.raw`\S`,
  ].join("|"),
  "gu",
);

/** The pieces of an amount's text; null when it is too long to be an amount. */
export function amountTokens(text: string): readonly AmountToken[] | null {
  const trimmed = text.trim();
  if (trimmed.length > LONGEST) return null;
  const ordinary = ordinaryText(trimmed);
  return [...ordinary.matchAll(PIECE)].map((match) => ({
    token: sortOf(match),
    text: match[0],
    spaced: /\s/.test(ordinary[match.index - 1] ?? ""),
  }));
}

function sortOf([, number, fraction, word]: RegExpMatchArray): AmountToken["token"] {
  if (number) return "number";
  if (fraction) return "fraction";
  return word ? "word" : "sign";
}
