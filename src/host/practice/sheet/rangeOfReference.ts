import { deserializeRangeWithSheet } from "@univerjs/engine-formula";
import type { FWorksheet } from "@univerjs/preset-sheets-core";
import { isAddress } from "../../isAddress";
import type { Grid } from "../grid";
import { sheetNamed } from "./sheetNamed";
import { trouble } from "./trouble";

/** A block of a sheet; rows and columns count from 0, both ends belong to it. */
export interface SheetArea {
  readonly sheet: FWorksheet;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** "Sheet1!" or "'My sheet'!" (an apostrophe of the name is doubled), then the rest. */
const qualified = /^(?:(?:'(?:[^']|'')+'|[^'!,]+)!)?([^'!]+)$/;

/**
 * The block that a reference of a formula means. Throws the record "several-areas" for a union, "no-such-range" for
 * anything that is no reference and no name, or lies outside the sheet.
 *
 * @param home the sheet that the formula stands on
 */
export function rangeOfReference(grid: Grid, reference: string, home: string): SheetArea {
  const text = namedReference(grid, reference.trim()) ?? reference.trim();
  const found = qualified.exec(text)?.[1];
  if (found === undefined || !isAddress(found)) throw trouble(unreadableBecause(text), reference);
  const { sheetName, range } = deserializeRangeWithSheet(text);
  const sheet = sheetNamed(grid, sheetName === "" ? home : sheetName);
  const block = {
    sheet,
    top: orElse(range.startRow, 0),
    left: orElse(range.startColumn, 0),
    bottom: orElse(range.endRow, sheet.getMaxRows() - 1),
    right: orElse(range.endColumn, sheet.getMaxColumns() - 1),
  };
  if (block.bottom >= sheet.getMaxRows() || block.right >= sheet.getMaxColumns()) {
    throw trouble("no-such-range", reference);
  }
  return block;
}

function namedReference(grid: Grid, name: string): string | null {
  const wanted = name.toLowerCase();
  const found = grid.book.getDefinedNames().find((defined) => defined.getName().toLowerCase() === wanted);
  return found === undefined ? null : found.getFormulaOrRefString().replace(/^=/, "").trim();
}

function unreadableBecause(text: string): "several-areas" | "no-such-range" {
  return text.replaceAll(/'(?:[^']|'')*'/g, "").includes(",") ? "several-areas" : "no-such-range";
}

/** A whole column has no first and last row of its own: the engine says NaN. */
function orElse(edge: number, otherwise: number): number {
  return Number.isNaN(edge) ? otherwise : edge;
}
