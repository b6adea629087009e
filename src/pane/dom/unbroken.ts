/** A sentence in which a figure and its percent sign stay on one line. */
export function unbroken(sentence: string): string {
  return sentence.replaceAll(/(?<=\d) (?=%)/g, "\u00a0");
}
