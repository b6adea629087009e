/**
 * Puts the parts of a formula that are names and signs through a function, and leaves texts ("…") and quoted sheet
 * names ('…') as they are.
 */
export function outsideTexts(formula: string, change: (piece: string) => string): string {
  return formula.replaceAll(/("(?:[^"]|"")*"|'(?:[^']|'')*')|[^"']+/g, (piece, kept) =>
    kept === undefined ? change(piece) : piece,
  );
}

/** The formula without its texts and quoted sheet names. */
export function bare(formula: string): string {
  return formula.replaceAll(/"(?:[^"]|"")*"|'(?:[^']|'')*'/g, " ");
}

/** The functions that a formula calls, in capitals. */
export function calledFunctions(formula: string): readonly string[] {
  return [...bare(formula).matchAll(/([A-Za-z_\\][\w.\\]*)\s*\(/g)].map(([, name = ""]) => name.toUpperCase());
}
