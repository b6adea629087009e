import type { NumberFormat } from "../host/newSheet";
import type { Line, LineFormat, Output } from "../nouns/line";
import { amountText } from "../words/amount";
import { percentText } from "../words/percent";
import { plainNumber } from "../words/plainNumber";

/** One of an answer's figures for reading; a text stays as it is. */
export function lineText(value: Output, format: LineFormat): string {
  if (typeof value === "string") return value;
  if (format === "percent") return percentText(value);
  return format === "count" ? plainNumber(value) : amountText(value);
}

const formats: Readonly<Record<Exclude<LineFormat, "amount">, NumberFormat>> = {
  percent: "0.0%",
  count: "0",
  decimal: "0.000",
  text: "General",
};

/** How a cell is to show one of an answer's figures. */
export function cellFormat({ format, value }: Pick<Line, "format" | "value">): NumberFormat {
  if (format !== "amount") return formats[format];
  const amount = value();
  return typeof amount === "number" ? amountFormat([amount]) : "0.0";
}

/**
 * How cells show amounts beside each other: with as many places as the largest needs for the three figures that
 * sentences have.
 */
export function amountFormat(amounts: readonly number[]): NumberFormat {
  const largest = amounts.reduce((most, amount) => Math.max(most, Math.abs(amount)), 0);
  if (largest === 0 || largest >= 100) return "0";
  if (largest >= 10) return "0.0";
  return largest >= 1 ? "0.00" : "0.000";
}
