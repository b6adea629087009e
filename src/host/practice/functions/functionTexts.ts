/** One parameter of a worksheet function as functions.json describes it. */
export interface ParameterText {
  readonly name: string;
  readonly description?: string;
  readonly optional?: boolean;
  /** "matrix" for a range, "scalar" or nothing for a single value. */
  readonly dimensionality?: string;
}

/** One worksheet function as functions.json describes it. */
export interface FunctionText {
  readonly id: string;
  readonly description?: string;
  readonly parameters: readonly ParameterText[];
}

/**
 * Reads the descriptions that are built with the worksheet functions, so the grid's help shows the same texts as
 * Excel's. Rejects when the file cannot be read.
 *
 * @param address of functions.json, relative to the page
 */
export async function functionTexts(address: string): Promise<readonly FunctionText[]> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`functions.json: ${answer.status}`);
  const file = (await answer.json()) as { readonly functions: readonly FunctionText[] };
  return file.functions;
}
