/** Vulgar fractions that stand as one character. */
export const FRACTIONS: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅕": 1 / 5,
  "⅖": 2 / 5,
  "⅗": 3 / 5,
  "⅘": 4 / 5,
  "⅙": 1 / 6,
  "⅚": 5 / 6,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
};

/** Look-alikes of the characters that a number is written with. */
const ORDINARY: readonly (readonly [look: RegExp, plain: string])[] = [
  [/[\u2010-\u2015\u2212]/g, "-"],
  [/[\u2007\u2009\u200A\u202F]/g, "\u00A0"],
  [/[\u2018\u2019\u2032\u00B4]/g, "'"],
  [/[\u201C\u201D\u2033]/g, '"'],
  [/\u2044/g, "/"],
  [/[\u200B-\u200D\uFEFF]/g, ""],
];

const FULL_WIDTH_SHIFT = 0xfee0;

/**
 * A text with ordinary characters in place of their look-alikes: minus signs and dashes are "-", thin and fixed
 * spaces are the fixed space, curly quotes and primes are straight, full-width digits and letters are narrow.
 *
 * Superscripts stay as they are: "506¹" is 506 with a footnote, never 5061.
 */
export function ordinaryText(text: string): string {
  const narrow = text.replace(/[\uFF01-\uFF5E]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - FULL_WIDTH_SHIFT));
  return ORDINARY.reduce((ordinary, [look, plain]) => ordinary.replace(look, plain), narrow);
}
