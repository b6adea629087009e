import type { Line, LineFormat, Output, Outputs } from "../nouns/line";
import type { ShownOutputs } from "../nouns/shownOutputs";
import { safeOutput } from "./output";
import type { Columns } from "./showable";

/** One cell. */
export function oneCell(output: Output, format: LineFormat): ShownOutputs {
  return { outputs: [[safeOutput(output)]], formats: [[format]] };
}

/** A block that is shown as it comes. */
export function plainBlock(outputs: Outputs): ShownOutputs {
  return { outputs: outputs.map((row) => row.map(safeOutput)), formats: outputs.map((row) => row.map(() => "text")) };
}

/** Labels in the first column, their figures in the second; the columns after those stay empty. */
export function lineBlock(lines: readonly Line[], width: number): ShownOutputs {
  const rest = <Filling>(filling: Filling) => Array<Filling>(width - 2).fill(filling);
  return {
    outputs: lines.map(({ label, value }) => [label, safeOutput(value()), ...rest<Output>("")]),
    formats: lines.map(({ format }) => ["text", format, ...rest<LineFormat>("text")]),
  };
}

/** A header row, and one row a treatment or plant. */
export function columnBlock({ header, rows, formats }: Columns): ShownOutputs {
  return {
    outputs: [header, ...rows.map((row) => row.map(safeOutput))],
    formats: [header.map(() => "text"), ...rows.map((row) => row.map((_, at) => formats?.[at] ?? "text"))],
  };
}

/** Some cells of one column below each other; one empty cell where there are none, as a cell must show something. */
export function oneColumn(outputs: readonly Output[], format: LineFormat): ShownOutputs {
  if (outputs.length === 0) return oneCell("", "text");
  return { outputs: outputs.map((output) => [safeOutput(output)]), formats: outputs.map(() => [format]) };
}

/** One block above another of the same width. */
export function stacked(above: ShownOutputs, below: ShownOutputs): ShownOutputs {
  return { outputs: [...above.outputs, ...below.outputs], formats: [...above.formats, ...below.formats] };
}
