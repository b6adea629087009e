import type { Call } from "../../formula/call";
import { quoted, quotedSheet } from "../../formula/quoted";
import { withArgument } from "../../formula/withArgument";
import { addressOf } from "../address";
import { BEDS } from "../headings";
import { bedLayout, type Stand } from "./bedLayout";
import type { BesideColumn, Stood } from "./columnsBeside";
import { labelOf } from "./repeatsBeside";

/** Treatments that were planted in beds and compared as if they had not been. */
export type InBeds =
  | {
      readonly layout: "shared";
      /** The formula that compares within beds; null where the sheet must be laid out anew for it. */
      readonly formula: string | null;
    }
  /** Each treatment in its own bed. */
  | { readonly layout: "own" };

/** A comparison of two ranges as it stands in the sheet. */
export interface TwoStood {
  readonly call: Call;
  /** The number of the call's argument *how*. */
  readonly how: number;
  /** The call's arguments that COMPAREMANY has as well, as they are typed; "" where they are left out. */
  readonly options: { readonly worthwhile: string; readonly lostPlants: string };
  readonly usual: Stood;
  readonly tried: Stood;
}

/**
 * How two treatments stand in beds by a bed column beside them that the call does not use (METHODS 9.2, C11 and C18).
 * Where both stand in two beds or more, the call that compares within them: row by row where each bed has one plant of
 * each in the same order, else COMPAREMANY where all plants stand in one column with their treatments beside.
 */
export function bedsBeside(two: TwoStood): InBeds | null {
  const [usualBeds, triedBeds] = [bedsOf(two.usual), bedsOf(two.tried)];
  if (usualBeds === null || triedBeds === null) return null;
  const [usual, tried] = [usualBeds.cells.map(labelOf), triedBeds.cells.map(labelOf)];
  const layout = bedLayout([...usual.map((bed): Stand => ["usual", bed]), ...tried.map((bed): Stand => ["new", bed])]);
  if (layout !== "shared") return layout === null ? null : { layout };
  const isRowByRow = usual.length === tried.length && usual.every((bed, at) => bed === tried[at]);
  const isOneEach = new Set(usual).size === usual.length;
  if (isRowByRow && isOneEach) return { layout, formula: withArgument(two.call, two.how, quoted("beds")) };
  return { layout, formula: inOneColumn(two, usualBeds.column) };
}

/** The column of beds among those beside a range, by its heading. */
export function bedsOf({ beside }: Stood): BesideColumn | null {
  return beside.find(({ above }) => above.some((text) => BEDS.test(text))) ?? null;
}

/** Both treatments below each other in one column, with a column that names them. */
function inOneColumn({ usual, tried, options }: TwoStood, beds: number): string | null {
  const { corner } = usual;
  if (corner.sheet !== tried.corner.sheet || corner.column !== tried.corner.column) return null;
  const names = usual.beside.find((column) => {
    const same = tried.beside.find((other) => other.column === column.column);
    return same !== undefined && isNameOf(column) && isNameOf(same) && firstLabel(column) !== firstLabel(same);
  });
  if (names === undefined) return null;
  const rows = [
    Math.min(corner.row + usual.headed, tried.corner.row + tried.headed),
    Math.max(usual.bottom, tried.bottom),
  ];
  const range = (column: number) => {
    const [from, to] = rows.map((row) => addressOf({ row, column }));
    return `${quotedSheet(corner.sheet)}!${from}:${to}`;
  };
  const name = quoted(String(names.cells[0] ?? "").trim());
  const { worthwhile, lostPlants } = options;
  const ranges = [range(corner.column), range(names.column), "", range(beds)];
  const given = [...ranges, name, "", worthwhile, lostPlants];
  while (given.at(-1) === "") given.pop();
  return `=FAIRBED.COMPAREMANY(${given.join(",")})`;
}

/** A text that is the same beside every plant. */
function isNameOf({ cells }: BesideColumn): boolean {
  return typeof cells[0] === "string" && new Set(cells.map(labelOf)).size === 1 && labelOf(cells[0]) !== "";
}

function firstLabel({ cells }: BesideColumn): string {
  return labelOf(cells[0] ?? null);
}
