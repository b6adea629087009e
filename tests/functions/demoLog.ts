import { readFileSync } from "node:fs";
import { at } from "./call";

/** A value as a sheet holds it: numbers as numbers, everything else as text, nothing as an empty cell. */
type SheetValue = string | number | null;

/**
 * A log of our own demo garden, Marlpit Corner, as a sheet: the heading row first. The columns are date, bed, plant,
 * mulch, fruit, grams, and note in the messy one.
 */
export function demoLog(name: "demoLogClean" | "demoLogMessy"): readonly (readonly SheetValue[])[] {
  return csvRows(name).map((row) => row.map(sheetValue));
}

/** One column of a demo log at its place in the sheet, with its heading. */
export function logColumn(log: readonly (readonly SheetValue[])[], heading: string) {
  const column = (log[0] ?? []).indexOf(heading);
  const letter = "ABCDEFG"[column];
  return at(
    `Log!${letter}1:${letter}${log.length}`,
    log.map((row) => row[column] ?? null),
  );
}

/** The rows of a comma-separated file of tests/reference, whose fields may stand in double quotes. */
export function csvRows(name: string): readonly (readonly string[])[] {
  const lines = readFileSync(`tests/reference/${name}.csv`, "utf8").trimEnd().split("\n");
  return lines.map((line) => {
    const fields = `,${line}`.matchAll(/,(?:"([^"]*)"|([^,]*))/g);
    return [...fields].map(([, quoted, bare = ""]) => quoted ?? bare);
  });
}

function sheetValue(field: string): SheetValue {
  if (field === "") return null;
  return /^-?\d+(\.\d+)?$/.test(field) ? Number(field) : field;
}
