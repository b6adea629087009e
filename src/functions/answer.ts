import { isRefusal, type Refusal } from "../answers/desk";
import { theDesk } from "../answers/theDesk";
import { type Blankness, blanksToldApart, readBlanks } from "../host/blanks";
import { formatsShown } from "../host/formats";
import type { CellRange } from "../nouns/cellRange";
import type { ErrorOutput } from "../nouns/line";
import { toCellRange } from "../ranges/toCellRange";
import { formatted } from "./formatted";
import { holdsZero, noticeBlanks, type Raw, withBlanks } from "./zeros";

/** What Excel hands over last with every call; either part may be missing. */
interface Invocation {
  readonly address?: string;
  readonly parameterAddresses?: readonly unknown[];
}

/** What the sheet says of the arguments that hold a zero; null for one that could not be read. */
type Sheet = ReadonlyMap<Raw, Blankness | null>;

/**
 * Answers one call of a worksheet function. Where a zero may be an empty cell the sheet is asked first, and only then
 * is the answer a promise; it always settles, with the zeros as they came when the sheet cannot be read.
 *
 * @param id the function's id
 * @param given the arguments as the host handed them over, in order; an omitted one is null or undefined
 * @returns a matrix, 1 × 1 for one value, or a promise of it
 * @throws an object with `code` (#VALUE! or #N/A) and `message` when the call is refused
 */
export function answer(id: string, given: readonly unknown[], invocation: unknown): any {
  const { parameterAddresses } = (invocation ?? {}) as Invocation;
  const raws = given.map((value, at): Raw => ({ value, address: addressOf(parameterAddresses?.[at]) }));
  for (const raw of raws) noticeBlanks(raw);
  const doubtful = blanksToldApart() ? [] : raws.filter((raw) => raw.address !== null && holdsZero(raw));
  const reading = doubtful.length === 0 ? null : readBlanks(doubtful.map(({ address }) => address ?? ""));
  if (reading === null) return reply(id, raws, new Map());
  return reading.then((found) => reply(id, raws, new Map(doubtful.map((raw, at) => [raw, found[at] ?? null]))));
}

/** A typed value and an expression have no address; how a host says so is not written down. */
function addressOf(told: unknown): string | null {
  return typeof told === "string" && told !== "" ? told : null;
}

function reply(id: string, raws: readonly Raw[], sheet: Sheet): any[][] {
  const names = theDesk.parameters(id) ?? [];
  const ranges = names.map(({ name }, at) => argument(name, raws[at], sheet));
  const given = theDesk.ask(id, ranges);
  if (isRefusal(given)) throw excelError(given);
  const outputs = given.cell();
  const shown: readonly (readonly unknown[])[] = formatsShown()
    ? formatted({ outputs, formats: given.formats() })
    : outputs;
  return shown.map((row) => row.map(excelOutput));
}

function argument(name: string, raw: Raw | undefined, sheet: Sheet): CellRange | null {
  if (raw === undefined) return null;
  const blankness = sheet.get(raw) ?? null;
  const { value, address } = blankness === null ? raw : withBlanks(raw, blankness);
  if (value === null || value === undefined) return null;
  return toCellRange(name, value, { address, zerosVerified: blankness !== null || blanksToldApart() });
}

/** An error value within a block is an error object in its cell's place. */
function excelOutput(output: unknown): unknown {
  return isErrorOutput(output) ? excelError({ code: output.error, message: output.sentence }) : output;
}

function isErrorOutput(output: unknown): output is ErrorOutput {
  return typeof output === "object" && output !== null && "sentence" in output;
}

/** Excel's own error where its runtime offers one: `CustomFunctions.Error` is not there while scripts first load. */
function excelError({ code, message }: Pick<Refusal, "code" | "message">): CustomFunctions.Error | Error {
  if (typeof CustomFunctions.Error === "function") {
    return new CustomFunctions.Error(code as CustomFunctions.ErrorCode, message);
  }
  return Object.assign(new Error(message), { code });
}
