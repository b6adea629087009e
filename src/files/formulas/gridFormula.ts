import { outsideTexts } from "./pieces";

/** A file or a function library in front of one of our calls, as damaged files have it. */
const foreign = /(?:'(?:[^']|'')*'|\[[^\]]*\][\w.]*|[A-Za-z_][\w.]*)!(?=_xldudf_FAIRBED_)/gi;
const stored = /\b_xldudf_FAIRBED_(\w+)(?=\s*\()/gi;
const typed = /(?<![\w.])(?:_xlfn\.|_xludf\.)?FAIRBED\.(\w+)(?=\s*\()/gi;
/** What Excel puts before functions and names younger than its file form ([MS-XLSX] 2.2.2). */
const young = /(?<![\w.])(?:_xlfn\.(?:_xlws\.)?|_xlws\.|_xlpm\.)/gi;

/**
 * A formula of a file as the grid reads it: our calls under the names under which they are typed, in whatever form
 * the file has them, and Excel's younger functions without their marks.
 *
 * @param formula in the file's form, without "="
 * @param own ids of our functions, in capitals
 * @returns with "="
 */
export function gridFormula(formula: string, own: ReadonlySet<string>): string {
  const ours = (whole: string, id: string) => (own.has(id.toUpperCase()) ? `FAIRBED.${id.toUpperCase()}` : whole);
  const read = outsideTexts(formula.replaceAll(foreign, ""), (piece) =>
    piece.replaceAll(stored, ours).replaceAll(typed, ours).replaceAll(young, ""),
  );
  return `=${read}`;
}
