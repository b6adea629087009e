/** A text cut into its sentences; a full stop within a number or a label (`shortLabel`) ends none. */
export function splitSentences(text: string): readonly string[] {
  return text.split(/(?<=[.?!]) +/).filter((sentence) => sentence !== "");
}
