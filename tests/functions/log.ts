import { readFileSync } from "node:fs";
import { at } from "./call";

/**
 * The rows of a pick log of the demo garden Marlpit Corner as a sheet holds them, heading row first: numbers as numbers,
 * ISO dates as Excel's numbers, the rest as typed. "logMessy" has twenty slips, which logMessySlips.csv lists by row.
 */
export function logRows(name: "logMessy" | "logClean" | "logMessySlips"): (string | number | null)[][] {
  const lines = readFileSync(`tests/reference/${name}.csv`, "utf8").trimEnd().split("\n");
  return lines.map((line) => fieldsOf(line).map(asCell));
}

/** The log as the argument of a call, from A1 of the sheet "Log". */
export function log(name: "logMessy" | "logClean"): ReturnType<typeof at> {
  const rows = logRows(name);
  const last = String.fromCharCode(64 + (rows[0]?.length ?? 1));
  return at(`Log!A1:${last}${rows.length}`, rows);
}

function fieldsOf(line: string): string[] {
  return [...`,${line}`.matchAll(/,(?:"([^"]*)"|([^,"]*))/g)].map(([, quoted, bare]) => quoted ?? bare ?? "");
}

function asCell(text: string): string | number | null {
  if (text === "") return null;
  if (/^\d+(\.\d+)?$/.test(text)) return Number(text);
  const [, year = "", month = "", day = ""] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  return year === "" ? text : Date.UTC(Number(year), Number(month) - 1, Number(day)) / 86_400_000 + 25_569;
}
