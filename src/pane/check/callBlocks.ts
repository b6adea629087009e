import type { Call } from "../../formula/call";
import { quotedSheet } from "../../formula/quoted";
import type { Reading } from "../../host/sheet";
import { addressOf, beyond } from "../address";
import type { Context } from "../context";
import { asTrouble } from "../trouble";

/** Cells to be looked over together; `kind` as LOOKOVER takes it, null to be found out. */
export interface CallBlock {
  readonly cells: Reading;
  readonly kind: "per plant" | null;
}

/** Arguments that name the rows of the others: with one of them a call's ranges are columns of one table. */
const labels: ReadonlySet<string> = new Set(["plants", "treatments", "dates", "beds", "names"]);
/** Functions whose ranges hold one number per plant. */
const perPlant: ReadonlySet<string> = new Set(["COMPARETWO", "PERPLANT", "UNEVENNESS", "WORTHIT"]);

/** A range of a call as it stands in the sheet. */
interface Given {
  readonly name: string;
  readonly reading: Reading;
}

/**
 * The cells that a call reads, as blocks to look over: columns of one table together, with those between them, as a
 * row's date, names and amounts tell more together than alone; other ranges each by itself. Single cells are options,
 * unless there is nothing else.
 */
export async function callBlocks(
  call: Call,
  home: string,
  { sheet, desk }: Pick<Context, "sheet" | "desk">,
): Promise<readonly CallBlock[]> {
  const given: Given[] = [];
  for (const [at, { name }] of (desk.parameters(call.id) ?? []).entries()) {
    const argument = call.arguments[at];
    const reading = argument?.kind === "reference" ? await readable(sheet.read(argument.text, home)) : null;
    if (reading !== null) given.push({ name, reading });
  }
  const ranges = given.filter(({ reading }) => cellCount(reading) > 1);
  const used = ranges.length > 0 ? ranges : given;
  const isTable = used.some(({ name }) => labels.has(name));
  if (!isTable)
    return used.map(({ reading }) => ({ cells: reading, kind: perPlant.has(call.id) ? "per plant" : null }));
  const blocks: CallBlock[] = [];
  for (const rows of tables(used)) {
    const { corner } = rows[0];
    blocks.push({ cells: await sheet.read(spanOf(rows), corner.sheet), kind: null });
  }
  return blocks;
}

/** The ranges that stand in the same rows of a sheet, together. */
function tables(given: readonly Given[]): readonly (readonly [Reading, ...Reading[]])[] {
  const byRows = new Map<string, [Reading, ...Reading[]]>();
  for (const { reading } of given) {
    const { corner, cells } = reading;
    const key = `${corner.row}:${cells.length}!${corner.sheet}`;
    const known = byRows.get(key);
    if (known === undefined) byRows.set(key, [reading]);
    else known.push(reading);
  }
  return [...byRows.values()];
}

/** From the leftmost column to the rightmost. */
function spanOf(rows: readonly [Reading, ...Reading[]]): string {
  const [{ corner, cells }] = rows;
  const left = Math.min(...rows.map((one) => one.corner.column));
  const right = Math.max(...rows.map((one) => one.corner.column + widthOf(one) - 1));
  const first = { row: corner.row, column: left };
  return `${quotedSheet(corner.sheet)}!${addressOf(first)}:${addressOf(beyond(first, cells.length - 1, right - left))}`;
}

function widthOf({ cells }: Reading): number {
  return cells[0]?.length ?? 1;
}

function cellCount(reading: Reading): number {
  return reading.cells.length * widthOf(reading);
}

/** A name that the sheet does not know has nothing to look over. */
async function readable(reading: Promise<Reading>): Promise<Reading | null> {
  try {
    return await reading;
  } catch (reason) {
    if (asTrouble(reason).trouble === "no-such-range") return null;
    throw reason;
  }
}
