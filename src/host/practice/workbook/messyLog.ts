import { cleanLog, type LogRow } from "./cleanLog";

/** A slip in one row: which row of the sheet, and which of its cells hold something else. */
type Slip = readonly [sheetRow: number, cells: Readonly<Record<number, string | number | null>>];

const [date, plant, mulch, fruit, grams, note] = [0, 2, 3, 4, 5, 6] as const;

/** Rows that a careful grower would not have written, by the row of the sheet they come to stand in, in that order. */
const extraRows: readonly (readonly [sheetRow: number, row: LogRow])[] = [
  [108, [null, null, "Week total", null, null, 19191]],
  [208, [null, null, "Week total", null, null, 15487]],
  [219, ["2023-07-24", 8, "B8-1", "Straw", 3, 663]],
  [236, ["2023-07-29", 8, "B8-3", "Grass clippings", 0, "-", "nothing ready"]],
  [275, []],
  [331, ["2023-06-05", 2, "B2-1", "Grass clippings", null, "dead", "slugs"]],
  [332, ["2023-07-14", 4, "B4-3", "Straw", null, "lost", "wheelbarrow"]],
];

/** The other slips of a season. */
const slips: readonly Slip[] = [
  [14, { [grams]: "0.235kg" }],
  [27, { [grams]: "177 g" }],
  [35, { [mulch]: "grass clippings " }],
  [49, { [mulch]: "bare" }],
  [60, { [grams]: 2220 }],
  [72, { [date]: "5/7" }],
  [73, { [date]: null }],
  [92, { [grams]: null, [note]: "forgot to weigh" }],
  [106, { [grams]: "506*", [note]: "* one eaten by slugs" }],
  [136, { [fruit]: "1+1", [note]: "1 split" }],
  [158, { [grams]: "0,726 kg" }],
  [181, { [plant]: "B1 - 1" }],
  [204, { [grams]: "approx 179" }],
];

/** The same log as it is often kept: twenty slips, each of which a plain sum trips over or hides. */
export const messyLog: readonly LogRow[] = withSlips(withExtraRows(cleanLog));

function withExtraRows(rows: readonly LogRow[]): readonly LogRow[] {
  const log = [...rows];
  for (const [sheetRow, row] of extraRows) log.splice(sheetRow - 2, 0, row);
  return log;
}

function withSlips(rows: readonly LogRow[]): readonly LogRow[] {
  const bySheetRow = new Map(slips);
  return rows.map((row, at) => {
    const cells = bySheetRow.get(at + 2);
    if (cells === undefined) return row;
    const changed = [...row];
    for (const [column, value] of Object.entries(cells)) changed[Number(column)] = value;
    return changed;
  });
}
