import type { Columns } from "../cells/showable";
import type { TreatmentUnevenness, Unevenness } from "../nouns/findings/unevenness";
import type { Output } from "../nouns/line";
import { unevenness } from "../questions/unevenness";
import { placeText } from "../words/place";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

const HEADER = [
  "Treatment",
  "Plants",
  "Average",
  "Standard deviation",
  "Unevenness",
  "Unevenness low",
  "Unevenness high",
  "Middle plant",
  "Lowest",
  "Highest",
  "Odd ones",
];

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
    lines: [],
    columns: () => columns(found),
    own: [line("plan with", "percent", () => found.all.range.high)],
  }),
};

function columns({ treatments, all }: Unevenness): Columns {
  const rows = treatments.map((treatment, at) => row(treatment.name ?? `Treatment ${at + 1}`, treatment));
  const total: Output[] = row("All", all);
  total[HEADER.indexOf("Standard deviation")] = "";
  return { header: HEADER, rows: [...rows, total], main: HEADER.indexOf("Unevenness") };
}

function row(name: string, found: TreatmentUnevenness): Output[] {
  const { plants, mean, deviation, unevenness: share, range, median, lowest, highest, odd } = found;
  const figures = [mean, deviation, share, range.low, range.high, median, lowest, highest].map(figure);
  return [name, plants, ...figures, odd.map(placeText).join(", ")];
}
