import { problemCode } from "../cells/problemCode";
import type { PlainCell, PlainNumbers } from "../nouns/findings/plainNumbers";
import type { Outputs } from "../nouns/line";
import { plainNumber } from "../questions/plainNumber";
import { problemSentence } from "../words/problem";
import { line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** PLAINNUMBER: cells with units, marks and words in them as plain numbers in one unit. */
export const plainNumberFunction: WorksheetFunction<PlainNumbers> = {
  id: "PLAINNUMBER",
  parameters: [
    { name: "cells", optional: false },
    { name: "unit", optional: true },
  ],
  choices: {},
  ask: plainNumber,
  shown: (found) => ({
    answer: () => found.cells.map((row) => row.map(output)),
    lines: [
      line("Numbers read", "count", () => found.numbers),
      line("Units converted", "count", () => count(found, "unit-converted")),
      line("Marks removed", "count", () => count(found, "mark-removed")),
      line("None, read as 0", "count", () => count(found, "none-as-zero")),
      line("Lost", "count", () => count(found, "lost")),
      line("Not read", "count", () => found.cells.flat().filter(({ is }) => is === "refused").length),
    ],
    columns: null,
    own: [],
  }),
};

function output(cell: PlainCell): Outputs[number][number] {
  switch (cell.is) {
    case "number":
      return cell.value;
    case "lost":
      return "lost";
    case "empty":
      return "";
    case "refused":
      return { error: problemCode(cell.problem), sentence: problemSentence(cell.problem) };
  }
}

function count({ readings }: PlainNumbers, kind: PlainNumbers["readings"][number]["kind"]): number {
  return readings.filter((reading) => reading.kind === kind).length;
}
