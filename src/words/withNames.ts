import { type Names, namesOf } from "./names";
import { usualWords } from "./shortLabel";
import { wordCount } from "./wordCount";

const mostWordsOfSentence = 25;
const wordsOfLabel = [usualWords, 5, 4, 3, 2];

/**
 * One sentence that names both treatments, at most 25 words long (METHODS 6.3): long headings are cut further, down to
 * two words each, until it fits, but never so far that both read the same. Where even that does not help, the shortest
 * that there is.
 */
export function withNames(usual: string | null, tried: string | null, sentence: (names: Names) => string): string {
  const whole = namesOf(usual, tried);
  const ways = wordsOfLabel
    .map((most) => namesOf(usual, tried, most))
    .filter((names) => names.usual !== "the usual" || whole.usual === "the usual")
    .map((names) => sentence(names));
  const fits = ways.find((way) => wordCount(way) <= mostWordsOfSentence);
  return fits ?? ways.reduce((best, way) => (wordCount(way) < wordCount(best) ? way : best));
}
