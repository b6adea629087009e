import { wrapped } from "./wrapped";

/** A line of text is at most so many letters long, so that a page holds it. */
const longest = 110;

/** Sentences filled into lines; a sentence begins a new line rather than be broken, unless it is longer than one. */
export function filledLines(sentences: readonly string[]): readonly string[] {
  const lines: string[] = [];
  for (const sentence of sentences.filter((one) => one !== "")) {
    const longer = `${lines.at(-1) ?? ""} ${sentence}`.trim();
    if (lines.length > 0 && longer.length <= longest) lines[lines.length - 1] = longer;
    else lines.push(...wrapped(sentence, (line) => line.length <= longest));
  }
  return lines;
}
