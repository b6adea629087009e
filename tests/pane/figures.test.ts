import { expect, it } from "vitest";
import type { LineFormat, Output } from "../../src/nouns/line";
import { amountFormat, cellFormat, lineText } from "../../src/pane/figures";
import { amountText } from "../../src/words/amount";

it.each([
  [[3018.375], "0"],
  [[-3018.375, 2], "0"],
  [[43.25], "0.0"],
  [[4.325], "0.00"],
  [[0.354], "0.000"],
  [[-0.354, 0], "0.000"],
  [[0.004], "0.000"],
  [[0], "0"],
  [[], "0"],
] as const)("amounts of %j are shown as %s", (amounts, format) => {
  expect(amountFormat(amounts)).toBe(format);
});

it.each([43.25, 4.325, 0.354])("%s in a cell has the digits that a sentence gives it", (amount) => {
  const places = amountFormat([amount]).split(".")[1]?.length ?? 0;
  expect(amount.toFixed(places)).toBe(amountText(amount));
});

it.each([
  ["percent", 0.4552, "0.0%", "46 %"],
  ["count", 8, "0", "8"],
  ["amount", 0.354, "0.000", "0.354"],
  ["decimal", 0.00324, "0.000", "0.00324"],
  ["amount", "one plant", "0.0", "one plant"],
  ["text", "Up, enough to matter", "General", "Up, enough to matter"],
] as const satisfies readonly (readonly [LineFormat, Output, string, string])[])(
  "%s: %s is shown as %s in a cell and as “%s” in the pane",
  (format, figure, inCell, inPane) => {
    expect(cellFormat({ format, value: () => figure })).toBe(inCell);
    expect(lineText(figure, format)).toBe(inPane);
  },
);
