import { plainBlock } from "../cells/blocks";
import type { Columns } from "../cells/showable";
import type { ManyTreatments, TreatmentFound } from "../nouns/findings/manyTreatments";
import type { Line, LineFormat, Output } from "../nouns/line";
import { compareMany } from "../questions/compareMany";
import { cautionTexts } from "../words/cautionTexts";
import { manyHeadline } from "../words/manyHeadline";
import { manyMethod } from "../words/manyMethod";
import { treatmentRange } from "../words/treatmentRange";
import { verdictText } from "../words/verdict";
import { anovaTable, differenceTable, lettersTable, pairTable } from "./compareManyTables";
import { figure, line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

const COLUMNS: readonly (readonly [label: string, format: LineFormat])[] = [
  ["Treatment", "text"],
  ["Change", "percent"],
  ["Range", "text"],
  ["Verdict", "text"],
  ["Plants", "count"],
  ["Lost", "count"],
  ["Average", "amount"],
  ["Average, beds removed", "amount"],
  ["Change low", "percent"],
  ["Change high", "percent"],
  ["p value", "decimal"],
  ["Letters", "text"],
];
const HEADER = COLUMNS.map(([label]) => label);
const FORMATS = COLUMNS.map(([, format]) => format);

/** COMPAREMANY: several treatments against the usual, or against each other. */
export const compareManyFunction: WorksheetFunction<ManyTreatments> = {
  id: "COMPAREMANY",
  parameters: [
    { name: "amounts", optional: false },
    { name: "treatments", optional: false },
    { name: "show", optional: true },
    { name: "beds", optional: true },
    { name: "usual", optional: true },
    { name: "how", optional: true },
    { name: "worthwhile", optional: true },
    { name: "lost_plants", optional: true },
  ],
  choices: {
    how: ["against usual", "own unevenness"],
    lost_plants: ["leave out", "count as zero"],
  },
  ask: compareMany,
  shown: (found) => ({
    answer: () => manyHeadline(found),
    lines: footer(found),
    columns: () => columns(found),
    own: [],
    tables: {
      "all pairs": () => plainBlock(pairTable(found)),
      difference: () => plainBlock(differenceTable(found)),
      anova: () => plainBlock(anovaTable(found)),
      letters: () => plainBlock(lettersTable(found)),
    },
  }),
};

function columns(found: ManyTreatments): Columns {
  const rows = found.treatments.map((treatment) => row(treatment));
  return { header: HEADER, rows, main: HEADER.indexOf("Verdict"), formats: FORMATS };
}

function row(treatment: TreatmentFound): readonly Output[] {
  const { name, isUsual, plants, lost, mean, meanBedsRemoved, againstUsual, letters } = treatment;
  const none = plants.length === 0 ? `No answer: no usable plants in ${name}` : "";
  const verdict = isUsual ? "the usual" : againstUsual === null ? none : verdictText(againstUsual.verdict);
  return [
    name,
    againstUsual === null ? "" : figure(againstUsual.change),
    againstUsual === null ? "" : treatmentRange(againstUsual),
    verdict,
    plants.length,
    lost.length,
    figure(mean),
    meanBedsRemoved === null ? "" : figure(meanBedsRemoved),
    againstUsual === null ? "" : figure(againstUsual.changeRange.low),
    againstUsual === null ? "" : figure(againstUsual.changeRange.high),
    againstUsual === null ? "" : figure(againstUsual.pValue),
    letters,
  ];
}

function footer(found: ManyTreatments): readonly Line[] {
  return [
    line("p, all together", "decimal", () => found.pAllTogether),
    line("Unevenness", "percent", () => found.unevenness),
    line("Method", "text", () => manyMethod(found)),
    line("Cautions", "text", () => cautionTexts({ cautions: found.quickCautions }).join(" ")),
  ];
}
