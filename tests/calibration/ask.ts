import { isRefusal } from "../../src/answers/desk";
import { theDesk } from "../../src/answers/theDesk";
import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";
import type { Finding } from "../../src/nouns/finding";

/** A call's arguments by name: a column of cells or a typed value; no name for an omitted one. */
export type Arguments = Readonly<Record<string, Cell | readonly Cell[]>>;

/**
 * What the shipped function finds, asked through the desk that answers the cell and the pane.
 *
 * @param id of the function, whose finding is of the named kind
 */
export function ask<Name extends Finding["finding"]>(
  id: string,
  finding: Name,
  given: Arguments,
): Extract<Finding, { readonly finding: Name }> {
  const parameters = theDesk.parameters(id) ?? [];
  const answer = theDesk.ask(
    id,
    parameters.map(({ name }) => rangeOf(name, given[name] ?? null)),
  );
  if (isRefusal(answer)) throw new Error(`${id}: ${answer.message}`);
  if (!isOf(finding, answer.finding)) throw new Error(`${id} found ${answer.finding.finding}`);
  return answer.finding;
}

function isOf<Name extends Finding["finding"]>(
  name: Name,
  finding: Finding,
): finding is Extract<Finding, { readonly finding: Name }> {
  return finding.finding === name;
}

function rangeOf(argument: string, given: Cell | readonly Cell[]): CellRange | null {
  if (given === null) return null;
  const column: readonly Cell[] = isColumn(given) ? given : [given];
  const corner = isColumn(given) ? { sheet: "Trial", row: 2, column: 2 } : null;
  return { argument, cells: column.map((cell) => [cell]), corner, zerosVerified: true };
}

function isColumn(given: Cell | readonly Cell[]): given is readonly Cell[] {
  return Array.isArray(given);
}
