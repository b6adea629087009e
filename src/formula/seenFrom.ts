import { type Token, tokenize } from "@borgar/fx";
import { quotedSheet } from "./quoted";

const cells: ReadonlySet<string> = new Set(["range", "range_beam"]);

/**
 * The formula as it must be typed on another sheet to mean what it means at home: its ranges get their sheet's name.
 * Names and tables mean the same everywhere and stay as they are.
 *
 * @param home the sheet that the formula was written for
 * @param there the sheet that it is to stand on
 */
export function seenFrom(formula: string, home: string, there: string): string {
  if (home === there) return formula;
  const named = ({ type, value }: Token) => cells.has(type) && !value.includes("!");
  return tokenize(formula)
    .map((token) => (named(token) ? `${quotedSheet(home)}!${token.value}` : token.value))
    .join("");
}
