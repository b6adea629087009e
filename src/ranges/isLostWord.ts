import { LOST_WORDS } from "../nouns/lostWords";
import { startsWithDate, stripDates } from "./datesInNote";

/** How much of a note is looked at; what stands further on cannot make a plant live again. */
const LOOKED_AT = 300;

/**
 * Whether a cell's text says that its plant was lost: a lost-word alone, or followed by punctuation, a bracket, "to",
 * "by", "on" or a date: "dead", "lost (slugs)", "died – slugs", "lost 14 July".
 *
 * Not lost are words that go on in another way ("broken stem, still cropping") and texts with an amount in them
 * ("lost 2 fruit"), that is with any digit outside a date.
 */
export function isLostWord(text: string): boolean {
  const note = text.slice(0, LOOKED_AT).trim().replace(/\s+/g, " ").toLowerCase();
  const word = LOST_WORDS.find((lost) => note.startsWith(lost));
  return word !== undefined && goesOnAsLost(note.slice(word.length)) && !holdsAmount(note);
}

/** A digit outside a date. */
function holdsAmount(note: string): boolean {
  return /\d/.test(stripDates(note));
}

/** What may stand directly behind a lost-word, or behind the date that follows it. */
function goesOnAsLost(rest: string): boolean {
  if (rest === "" || /^ ?[^\p{L}\p{N} ]/u.test(rest) || /^ (?:to|by|on)(?![\p{L}\p{N}])/u.test(rest)) return true;
  const date = rest.startsWith(" ") ? startsWithDate(rest.slice(1)) : null;
  return date !== null && goesOnAsLost(rest.slice(1 + date.length));
}
