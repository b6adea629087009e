import type { Columns } from "../cells/showable";
import type { TreatmentUnevenness, Unevenness } from "../nouns/findings/unevenness";
import type { LineFormat, Output } from "../nouns/line";
import { unevenness } from "../questions/unevenness";
import { placeText } from "../words/place";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

const COLUMNS: readonly (readonly [label: string, format: LineFormat])[] = [
  ["Treatment", "text"],
  ["Plants", "count"],
  ["Average", "amount"],
  ["Standard deviation", "amount"],
  ["Unevenness", "percent"],
  ["Unevenness low", "percent"],
  ["Unevenness high", "percent"],
  ["Middle plant", "amount"],
  ["Lowest", "amount"],
  ["Highest", "amount"],
  ["Odd ones", "text"],
];
const HEADER = COLUMNS.map(([label]) => label);
const FORMATS = COLUMNS.map(([, format]) => format);

/** UNEVENNESS: how much plants treated alike differ. */
export const unevennessFunction: WorksheetFunction<Unevenness> = {
  id: "UNEVENNESS",
  parameters: [
    { name: "amounts", optional: false },
    { name: "show", optional: true },
    { name: "treatments", optional: true },
    { name: "beds", optional: true },
  ],
  choices: {},
  ask: unevenness,
  shown: (found) => ({
    answer: () => figure(found.all.unevenness),
    answerFormat: "percent",
    lines: [],
    columns: () => columns(found),
    own: [line("plan with", "percent", () => found.all.range.high)],
  }),
};

function columns({ treatments, all }: Unevenness): Columns {
  const rows = treatments.map((treatment, at) => row(treatment.name ?? `Treatment ${at + 1}`, treatment));
  const total: Output[] = row("All", all);
  total[HEADER.indexOf("Standard deviation")] = "";
  return { header: HEADER, rows: [...rows, total], main: HEADER.indexOf("Unevenness"), formats: FORMATS };
}

function row(name: string, found: TreatmentUnevenness): Output[] {
  const { plants, mean, deviation, unevenness: share, range, median, lowest, highest, odd } = found;
  const figures = [mean, deviation, share, range.low, range.high, median, lowest, highest].map(figure);
  return [name, plants, ...figures, odd.map(placeText).join(", ")];
}
