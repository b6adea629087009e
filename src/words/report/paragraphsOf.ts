/** Paragraphs of sentences, an empty line between them; empty sentences and paragraphs leave no trace. */
export function paragraphsOf(...paragraphs: readonly (readonly string[])[]): string {
  return paragraphs
    .map((sentences) => sentences.filter((sentence) => sentence !== "").join(" "))
    .filter((paragraph) => paragraph !== "")
    .join("\n\n");
}
