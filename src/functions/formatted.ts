import type { ErrorOutput, Output } from "../nouns/line";
import type { ShownOutputs } from "../nouns/shownOutputs";

/** A number with the format to show it in, as Excel takes it from a worksheet function. */
interface FormattedNumber {
  readonly type: "Double";
  readonly basicValue: number;
  readonly numberFormat: string;
}

/** The block with its percents as such: 0.455 shows as 45.5%. Everything else stays a plain number or a text. */
export function formatted({ outputs, formats }: ShownOutputs): (Output | ErrorOutput | FormattedNumber)[][] {
  return outputs.map((row, down) =>
    row.map((output, across) =>
      typeof output === "number" && formats[down]?.[across] === "percent" ? percent(output) : output,
    ),
  );
}

function percent(basicValue: number): FormattedNumber {
  return { type: "Double", basicValue, numberFormat: "0.0%" };
}
