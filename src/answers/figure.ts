import { isKnown, type Known } from "../nouns/known";
import type { Line, LineFormat, Output } from "../nouns/line";
import { absenceText } from "../words/absence";

/** A figure for a cell, or the text that says why there is none. */
export function figure(known: Known): Output {
  return isKnown(known) ? known : absenceText(known);
}

/** A labelled figure of an answer's table. */
export function line(label: string, format: LineFormat, value: () => Known | string): Line {
  return {
    label,
    format,
    value: () => {
      const known = value();
      return typeof known === "string" ? known : figure(known);
    },
  };
}
