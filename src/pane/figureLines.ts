import type { Answer } from "../answers/desk";
import type { Unevenness } from "../nouns/findings/unevenness";
import { isKnown } from "../nouns/known";
import type { Line, Output, Outputs } from "../nouns/line";
import { absenceText } from "../words/absence";

/** Every figure of an answer that one cell can show: its lines, or of UNEVENNESS's table the main column. */
export function figureLines({ finding, lines, table }: Answer): readonly Line[] {
  return finding.finding === "unevenness" ? unevennessLines(finding, table()) : lines;
}

function unevennessLines({ all }: Unevenness, [header = [], ...rows]: Outputs): readonly Line[] {
  const main = header.indexOf("Unevenness");
  const { high } = all.range;
  return [
    ...rows.map((row): Line => ({ label: String(row[0]), format: "percent", value: () => textOrNumber(row[main]) })),
    { label: "plan with", format: "percent", value: () => (isKnown(high) ? high : absenceText(high)) },
  ];
}

function textOrNumber(output: Outputs[number][number] | undefined): Output {
  return typeof output === "number" || typeof output === "string" ? output : "";
}
