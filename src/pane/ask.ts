import type { Answer, Desk, Refusal } from "../answers/desk";
import type { Argument, Call } from "../formula/call";
import type { Sheet } from "../host/sheet";
import type { Cell } from "../nouns/cell";
import type { CellRange } from "../nouns/cellRange";
import { asTrouble } from "./trouble";

/** What became of a call that was asked again from the pane. */
export type Asked =
  | { readonly outcome: "answer"; readonly answer: Answer; readonly ranges: readonly CellRange[] }
  | { readonly outcome: "refusal"; readonly refusal: Refusal; readonly ranges: readonly CellRange[] }
  /** An argument that only the spreadsheet can work out, or that the sheet does not know. */
  | { readonly outcome: "unreadable"; readonly argument: string; readonly text: string }
  /** A function that this Fairbed does not have. */
  | { readonly outcome: "unknown" };

/** Where a call's ranges are read, and who answers it. */
export interface Asking {
  readonly sheet: Sheet;
  readonly desk: Desk;
  /** The sheet that the formula stands on. */
  readonly home: string;
}

/** Asks the desk what a cell's call asks, over the cells as they stand now. Rejects with the port's troubles. */
export async function ask(call: Call, asking: Asking): Promise<Asked> {
  const parameters = asking.desk.parameters(call.id);
  if (parameters === null) return { outcome: "unknown" };
  const given: (CellRange | null)[] = [];
  for (const [index, { name }] of parameters.entries()) {
    const argument = call.arguments[index] ?? { kind: "omitted", text: "" };
    const range = await rangeOf(argument, name, asking);
    if (range === "unreadable") return { outcome: "unreadable", argument: name, text: argument.text };
    given.push(range);
  }
  const reply = asking.desk.ask(call.id, given);
  const ranges = given.filter((range) => range !== null);
  return "problem" in reply
    ? { outcome: "refusal", refusal: reply, ranges }
    : { outcome: "answer", answer: reply, ranges };
}

async function rangeOf(argument: Argument, name: string, asking: Asking): Promise<CellRange | null | "unreadable"> {
  switch (argument.kind) {
    case "omitted":
      return null;
    case "expression":
      return "unreadable";
    case "value":
      return typed(name, [[argument.cell]]);
    case "block":
      return typed(name, argument.cells);
    case "call":
      return nested(argument.call, name, asking);
    case "reference":
      return read(argument.text, name, asking);
  }
}

/** Values that stand in a formula instead of a cell, as an argument. */
export function typed(argument: string, cells: readonly (readonly Cell[])[]): CellRange {
  return { argument, cells, corner: null, zerosVerified: true };
}

/** What one of our calls gives to the call around it: its cell, or the error that would stand there. */
async function nested(call: Call, name: string, asking: Asking): Promise<CellRange | "unreadable"> {
  const asked = await ask(call, asking);
  if (asked.outcome === "answer") return typed(name, asked.answer.cell());
  return asked.outcome === "refusal" ? typed(name, [[{ error: asked.refusal.code }]]) : "unreadable";
}

async function read(text: string, name: string, { sheet, home }: Asking): Promise<CellRange | "unreadable"> {
  try {
    const { cells, corner } = await sheet.read(text, home);
    return { argument: name, cells, corner, zerosVerified: true };
  } catch (reason) {
    if (asTrouble(reason).trouble === "no-such-range") return "unreadable";
    throw reason;
  }
}
