/**
 * A name or phrase made ready to begin a sentence: "the new" becomes "The new", "straw" becomes "Straw". A first word
 * with a capital further in ("pH", "iTape") is spelt so on purpose and stays.
 */
export function sentenceStart(text: string): string {
  const [firstWord = ""] = text.split(" ");
  return firstWord === firstWord.toLowerCase() ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}
