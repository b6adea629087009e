/**
 * A text broken into lines between its words.
 *
 * @param fits whether a line is short enough; a word that never fits stands on a line of its own
 */
export function wrapped(text: string, fits: (line: string) => boolean): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((one) => one !== "")) {
    const longer = `${lines.at(-1) ?? ""} ${word}`.trim();
    if (lines.length > 0 && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
