import type { Area } from "../book";

/** Excel's last row and column, counted from 0. */
export const last = { row: 1_048_575, column: 16_383 } as const;

/** A place on a sheet; rows and columns count from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** "B" of 1. */
export function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}

/** 1 of "B". */
export function columnNumber(name: string): number {
  let number = 0;
  for (const letter of name.toUpperCase()) number = number * 26 + letter.charCodeAt(0) - 64;
  return number - 1;
}

/** "B2" of row 1, column 1. */
export function addressOf({ row, column }: Place): string {
  return `${columnName(column)}${row + 1}`;
}

/** The place that "B2" or "$B$2" names; undefined of anything else, and outside Excel's sheet. */
export function placeOf(address: string): Place | undefined {
  const found = /^\$?([A-Z]{1,3})\$?([1-9]\d{0,6})$/i.exec(address);
  if (found === null) return undefined;
  const place = { row: Number(found[2]) - 1, column: columnNumber(found[1] ?? "") };
  return place.row <= last.row && place.column <= last.column ? place : undefined;
}

/** The block that "B2:C9" or "B2" names; undefined of anything else. */
export function areaOf(reference: string): Area | undefined {
  const [from = "", to = from] = reference.split(":");
  const [first, second] = [placeOf(from), placeOf(to)];
  if (first === undefined || second === undefined) return undefined;
  return { top: first.row, left: first.column, bottom: second.row, right: second.column };
}

/** "B2:C9" of a block, "B2" of a block of one cell. */
export function referenceOf({ top, left, bottom, right }: Area): string {
  const first = addressOf({ row: top, column: left });
  return top === bottom && left === right ? first : `${first}:${addressOf({ row: bottom, column: right })}`;
}
