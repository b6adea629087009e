import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import type { Cell } from "../../../src/nouns/cell";
import { tableAround } from "../../../src/pane/check/tableAround";
import { memorySheet } from "../memorySheet";

/** A title, a table with a spacer row, two empty rows, a second table; beside them, after a gap, a note. */
const rows: readonly (readonly Cell[])[] = [
  ["Courgettes 2023", null, null, null],
  ["plant", "grams", null, "a note"],
  ["B1-1", 200, null, null],
  [null, null, null, null],
  ["B1-2", 210, null, null],
  [null, null, null, null],
  [null, null, null, null],
  ["bean", "pods", null, null],
  ["R1", 12, null, null],
];

async function around(address: string): Promise<string | null> {
  const sheet = memorySheet(theDesk);
  sheet.fill("B2", rows);
  sheet.click(address);
  return tableAround(await sheet.selection(), sheet);
}

it.each<[string, string | null, string]>([
  ["C4", "B2:C6", "from any cell of it, over a spacer row"],
  ["B5", "B2:C6", "from an empty cell inside it"],
  ["C10", "B9:C10", "two empty rows end it"],
  ["E3", "E3:E3", "an empty column ends it"],
  ["D4", null, "an empty column is none"],
  ["B30", null, "below everything is none"],
])("the table around %s is %s: %s", async (cell, table, _) => {
  expect(await around(cell)).toBe(table);
});
