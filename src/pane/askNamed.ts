import type { Answer, Desk, Refusal } from "../answers/desk";
import type { CellRange } from "../nouns/cellRange";

/**
 * Asks the desk with ranges that each say which argument they are; one that the function does not have is passed
 * over.
 */
export function askNamed(desk: Desk, id: string, given: readonly CellRange[]): Answer | Refusal {
  const parameters = desk.parameters(id) ?? [];
  return desk.ask(
    id,
    parameters.map(({ name }) => given.find(({ argument }) => argument === name) ?? null),
  );
}
