import { doors } from "../../src/functions/doors";

/** The name of a worksheet function. */
export type Id = keyof typeof doors;

/** What a refused call shows: the error value and its sentence. */
export interface Refused {
  readonly code: string;
  readonly message: string;
}

/** An argument that Excel gives an address with. */
interface Placed {
  readonly address: string;
  readonly cells: unknown;
}

// Excel's runtime has this name before any function runs; its Error is not there while scripts first load.
Object.assign(globalThis, { CustomFunctions: {} });

/** Numbers or words one below the other at an address, as `parameterAddresses` names it: at("Sheet1!B2:B9", [1, 2]). */
export function at(address: string, cells: unknown): Placed {
  return { address, cells };
}

/**
 * What a call puts into the sheet, row by row. A list is a column of cells, a list of lists a block, anything else a
 * typed value; null or undefined an omitted argument.
 *
 * @throws what Excel would show as an error value: an object with `code` and `message`
 */
export function matrix(id: Id, ...given: readonly unknown[]): unknown[][] {
  const door = doors[id] as (...all: unknown[]) => unknown[][];
  const all = Array.from({ length: door.length - 1 }, (_, place) => given[place] ?? null);
  const parameterAddresses = all.map((argument) => (isPlaced(argument) ? argument.address : undefined));
  const cells = all.map((argument) => asExcel(isPlaced(argument) ? argument.cells : argument));
  return door(...cells, { address: "Sheet1!Z9", parameterAddresses });
}

/** The one value that a call puts into its cell. */
export function cell(id: Id, ...given: readonly unknown[]): unknown {
  const block = matrix(id, ...given);
  if (block.length !== 1 || block[0]?.length !== 1) throw new Error(`${id} spills ${block.length} rows`);
  return block[0][0];
}

/** The one number that a call puts into its cell; NaN for a text. */
export function number(id: Id, ...given: readonly unknown[]): number {
  const value = cell(id, ...given);
  return typeof value === "number" ? value : Number.NaN;
}

/** The error value that a call shows. */
export function refused(id: Id, ...given: readonly unknown[]): Refused {
  const reply = replyOf(id, ...given);
  if (Array.isArray(reply)) throw new Error(`${id} was not refused: ${JSON.stringify(reply)}`);
  return reply;
}

/** Cells or an error value, whichever the call gives. Anything else thrown is a mistake of ours and goes on. */
export function replyOf(id: Id, ...given: readonly unknown[]): unknown[][] | Refused {
  try {
    return matrix(id, ...given);
  } catch (error) {
    const { code, message } = error as Refused;
    if (typeof code !== "string") throw error;
    return { code, message };
  }
}

/** A two-column table's labels, or a table's first column. */
export function labels(table: readonly (readonly unknown[])[]): readonly unknown[] {
  return table.map(([label]) => label);
}

/** Numbers as Excel sends a column; NaN where a host has none. */
export function column(values: readonly unknown[]): unknown[][] {
  return values.map((value) => [value]);
}

function isPlaced(argument: unknown): argument is Placed {
  return typeof argument === "object" && argument !== null && "address" in argument && "cells" in argument;
}

function asExcel(argument: unknown): unknown {
  return Array.isArray(argument) && !argument.some(Array.isArray) ? column(argument) : argument;
}
