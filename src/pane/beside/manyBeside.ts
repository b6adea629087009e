import type { Call } from "../../formula/call";
import { findCalls } from "../../formula/findCalls";
import { quotedSheet } from "../../formula/quoted";
import { withArgument } from "../../formula/withArgument";
import type { Cell } from "../../nouns/cell";
import { addressOf } from "../address";
import { bedLayout, type Stand } from "./bedLayout";
import { bedsOf, type InBeds } from "./bedsBeside";
import type { Stood } from "./columnsBeside";
import { labelOf } from "./repeatsBeside";

/** A comparison of several treatments as it stands in the sheet, made without beds. */
export interface ManyStood {
  readonly call: Call;
  /** The numbers of the call's arguments *beds* and *how*. */
  readonly at: { readonly beds: number; readonly how: number };
  readonly amounts: Stood;
  /** The treatments, row by row beside the amounts. */
  readonly treatments: readonly Cell[];
  /** Whether it is compared with own unevenness, which cannot be done within beds. */
  readonly ownUnevenness: boolean;
}

/**
 * How several treatments stand in beds by a bed column beside the amounts that the call does not use (METHODS 9.2, C11
 * and C18), and the same call with the beds given.
 */
export function manyBeside({ call, at, amounts, treatments, ownUnevenness }: ManyStood): InBeds | null {
  const beds = bedsOf(amounts);
  if (beds === null) return null;
  const layout = bedLayout(treatments.map((name, row): Stand => [labelOf(name), labelOf(beds.cells[row] ?? null)]));
  if (layout !== "shared") return layout === null ? null : { layout };
  const [plain = call] = ownUnevenness ? findCalls(withArgument(call, at.how, "")) : [];
  return {
    layout,
    formula: withArgument(plain, at.beds, rangeBeside(call.arguments[0]?.text ?? "", amounts, beds.column)),
  };
}

const columnRange = /^((?:.*!)?\$?)[A-Z]+(\$?\d*:\$?)[A-Z]+(\$?\d*)$/i;

/** A column's cells beside a range, written as the range is; row by row where the range has a name. */
function rangeBeside(reference: string, { corner, bottom }: Stood, column: number): string {
  const letters = addressOf({ row: 1, column }).slice(0, -1);
  if (columnRange.test(reference)) return reference.replace(columnRange, `$1${letters}$2${letters}$3`);
  const [from, to] = [corner.row, bottom].map((row) => addressOf({ row, column }));
  return `${quotedSheet(corner.sheet)}!${from}:${to}`;
}
