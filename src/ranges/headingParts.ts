import { type Unit, unitOf } from "./unit";

/** A heading taken apart: "Straw (g)" is the name "Straw" in grams, "grams" is no name at all. */
export interface HeadingParts {
  readonly name: string | null;
  readonly unit: Unit | null;
}

/** Headings longer than this name no unit. */
const LONGEST = 200;

/**
 * The unit that a heading names, and the name that is left.
 *
 * A unit counts in brackets at the end ("Straw (g)", "Yield [kg per plant]"), as the whole heading ("grams",
 * "kg/plant"), as its last word ("Weight kg", "Straw, g") or before "per" or a slash ("Yield g per plant"). Brackets
 * and whole headings that name a unit are no part of the name. One capital letter is a name ("G", "Plot M"), and so is
 * "in" outside brackets. Two different units in those places name none.
 */
export function headingParts(heading: string): HeadingParts {
  if (heading.length > LONGEST) return { name: heading, unit: null };
  const bracket = /[([]([^()[\]]*)[)\]]\s*$/.exec(heading);
  const inBracket = bracket && unitPhrase(words(bracket[1] ?? ""));
  if (bracket && inBracket) return { name: heading.slice(0, bracket.index).trim() || null, unit: inBracket };
  const outside = words(heading).map((word) => (isNameLike(word) ? `"${word}"` : word));
  const whole = unitPhrase(outside);
  return { name: whole ? null : heading, unit: whole ?? namedLast(outside) };
}

/** A unit alone, or followed by "per …", "a …", "each" or "/ …". */
function unitPhrase([first, second]: readonly string[]): Unit | null {
  const alone = second === undefined || ["/", "per", "a", "each"].includes(second.toLowerCase());
  return first !== undefined && alone ? unitOf(first) : null;
}

/** The unit in last place or before "per" or "/", unless "per" or a number stands before it or two units differ. */
function namedLast(all: readonly string[]): Unit | null {
  const named = all.flatMap((word, at) => {
    const [before = "", next = "/"] = [all[at - 1]?.toLowerCase(), all[at + 1]?.toLowerCase()];
    const inPlace = (next === "/" || next === "per") && !/^(?:\/|per|.*\d)$/.test(before);
    return inPlace ? (unitOf(word) ?? []) : [];
  });
  return new Set(named).size === 1 ? (named[0] ?? null) : null;
}

function isNameLike(word: string): boolean {
  return /^[A-Z]$/.test(word) || word.toLowerCase() === "in";
}

/** Words without the marks between them; a slash is a word of its own. */
function words(text: string): readonly string[] {
  return text.match(/[\p{L}\p{N}]+\.?|\//gu) ?? [];
}
