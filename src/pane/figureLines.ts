import type { Answer } from "../answers/desk";
import type { ManyTreatments } from "../nouns/findings/manyTreatments";
import type { Unevenness } from "../nouns/findings/unevenness";
import { isKnown } from "../nouns/known";
import type { Line, Output, Outputs } from "../nouns/line";
import { absenceText } from "../words/absence";

/** Every figure of an answer that one cell can show: its lines, and of a table by rows the main column. */
export function figureLines({ finding, lines, table }: Answer): readonly Line[] {
  if (finding.finding === "unevenness") return unevennessLines(finding, table());
  return finding.finding === "many-treatments" ? [...verdictLines(finding, table()), ...lines] : lines;
}

/** A treatment's name shows its verdict; without a usual there are none. */
function verdictLines({ usual, treatments }: ManyTreatments, [header = [], ...rows]: Outputs): readonly Line[] {
  if (usual === null) return [];
  const main = header.indexOf("Verdict");
  return treatments.map(
    ({ name }, at): Line => ({ label: name, format: "text", value: () => textOrNumber(rows[at]?.[main]) }),
  );
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
