import { isRefusal, type Refusal } from "../answers/desk";
import { theDesk } from "../answers/theDesk";
import { blanksToldApart } from "../host/blanks";
import type { CellRange } from "../nouns/cellRange";
import { toCellRange } from "../ranges/toCellRange";

/** What Excel hands over last with every call; either part may be missing. */
interface Invocation {
  readonly address?: string;
  readonly parameterAddresses?: readonly unknown[];
}

/**
 * Answers one call of a worksheet function.
 *
 * @param id the function's id
 * @param given the arguments as the host handed them over, in order; an omitted one is null or undefined
 * @returns a matrix, 1 × 1 for one value
 * @throws an object with `code` (#VALUE! or #N/A) and `message` when the call is refused
 */
export function answer(id: string, given: readonly unknown[], invocation: unknown): any[][] {
  const names = theDesk.parameters(id) ?? [];
  const { parameterAddresses = [] } = (invocation ?? {}) as Invocation;
  const ranges = names.map(({ name }, at) => argument(name, given[at], parameterAddresses[at]));
  const reply = theDesk.ask(id, ranges);
  if (isRefusal(reply)) throw excelError(reply);
  return reply.cell().map((row) => [...row]);
}

function argument(name: string, raw: unknown, address: unknown): CellRange | null {
  if (raw === null || raw === undefined) return null;
  const where = typeof address === "string" ? address : null;
  return toCellRange(name, raw, { address: where, zerosVerified: blanksToldApart() });
}

/** Excel's own error where its runtime offers one: `CustomFunctions.Error` is not there while scripts first load. */
function excelError({ code, message }: Refusal): CustomFunctions.Error | Error {
  if (typeof CustomFunctions.Error === "function") {
    return new CustomFunctions.Error(code as CustomFunctions.ErrorCode, message);
  }
  return Object.assign(new Error(message), { code });
}
