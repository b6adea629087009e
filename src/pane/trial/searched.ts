import { findCalls } from "../../formula/findCalls";
import type { Sheet } from "../../host/sheet";
import { textsIn } from "../textsIn";
import { unlessTrouble } from "../trouble";

/** What a workbook's formulas of ours tell of its trials. */
export interface Searched {
  /** The sheets that hold them. */
  readonly sheets: readonly string[];
  /** The texts in the cells that they read: headings, treatments, labels, notes. */
  readonly texts: ReadonlySet<string>;
}

/** Searches the whole workbook, which takes long in a large one. What cannot be read at the moment is left out. */
export async function searched(sheet: Pick<Sheet, "calls" | "read">): Promise<Searched> {
  const formulas = await sheet.calls().catch(unlessTrouble([]));
  const references = new Map<string, readonly [reference: string, home: string]>();
  for (const { formula, sheet: home } of formulas) {
    for (const { kind, text } of findCalls(formula).flatMap((call) => call.arguments)) {
      if (kind === "reference") references.set(`${home}!${text}`, [text, home]);
    }
  }
  const readings = [];
  for (const [reference, home] of references.values()) {
    readings.push(await sheet.read(reference, home).catch(unlessTrouble({ cells: [] })));
  }
  return { sheets: formulas.map((formula) => formula.sheet), texts: textsIn(readings) };
}
