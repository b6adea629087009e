import { at } from "./call";
import { csvRows } from "./demoLog";

/**
 * The rows of a pick log of the demo garden Marlpit Corner as a sheet holds them, heading row first: numbers as numbers,
 * ISO dates as Excel's numbers, the rest as typed. "demoLogMessy" has twenty slips, which demoLogMessySlips.csv lists by row.
 */
export function logRows(name: "demoLogMessy" | "demoLogClean" | "demoLogMessySlips"): (string | number | null)[][] {
  return csvRows(name).map((row) => row.map(asCell));
}

/** The log as the argument of a call, from A1 of the sheet "Log". */
export function log(name: "demoLogMessy" | "demoLogClean"): ReturnType<typeof at> {
  const rows = logRows(name);
  const last = String.fromCharCode(64 + (rows[0]?.length ?? 1));
  return at(`Log!A1:${last}${rows.length}`, rows);
}

function asCell(text: string): string | number | null {
  if (text === "") return null;
  if (/^\d+(\.\d+)?$/.test(text)) return Number(text);
  const [, year = "", month = "", day = ""] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text) ?? [];
  return year === "" ? text : Date.UTC(Number(year), Number(month) - 1, Number(day)) / 86_400_000 + 25_569;
}
