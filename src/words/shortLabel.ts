const mostCharacters = 40;

/** As many words of a label as a sentence usually has room for. */
export const usualWords = 6;

/**
 * A label from the sheet as it goes into a sentence: on one line, and cut with "…" after 40 characters or six words,
 * so that a sentence stays short. A space after a full stop ("No. 2") becomes one that does not break, as no sentence
 * ends there. Whatever else it holds stays as typed: it is plain text and never markup.
 */
export function shortLabel(label: string): string {
  return shorterLabel(label, usualWords);
}

/** The same after fewer words, for a sentence that would be too long with six. */
export function shorterLabel(label: string, mostWords: number): string {
  const words = label.split(/\s+/).filter((word) => word !== "");
  const whole = words.join(" ");
  const few = words.slice(0, mostWords).join(" ");
  if (Array.from(few).length > mostCharacters) return unbroken(`${cutAtWord(few)}…`);
  return unbroken(few === whole ? whole : `${few}…`);
}

function unbroken(label: string): string {
  return label.replaceAll(/([.?!]) /g, "$1\u00a0");
}

/** Cuts by whole characters, so that no accent or emoji is split into halves. */
function cutAtWord(text: string): string {
  const cut = Array.from(text)
    .slice(0, mostCharacters - 1)
    .join("");
  const lastSpace = cut.lastIndexOf(" ");
  return lastSpace > mostCharacters / 2 ? cut.slice(0, lastSpace) : cut;
}
