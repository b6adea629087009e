/** A text cut into its sentences; a full stop within a number ends none. */
export function splitSentences(text: string): readonly string[] {
  return text.split(/(?<=[.?!])\s+/).filter((sentence) => sentence !== "");
}
