import type { NumberFormat } from "../host/newSheet";
import type { LineFormat, Output } from "../nouns/line";
import { amountText } from "../words/amount";
import { percentText } from "../words/percent";
import { plainNumber } from "../words/plainNumber";

/** One of an answer's figures for reading; a text stays as it is. */
export function lineText(value: Output, format: LineFormat): string {
  if (typeof value === "string") return value;
  if (format === "percent") return percentText(value);
  return format === "count" ? plainNumber(value) : amountText(value);
}

const formats: Readonly<Record<LineFormat, NumberFormat>> = {
  percent: "0.0%",
  amount: "0.0",
  count: "0",
  decimal: "0.000",
  text: "General",
};

/** How a cell is to show a figure of that kind. */
export function cellFormat(format: LineFormat): NumberFormat {
  return formats[format];
}
