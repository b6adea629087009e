import type { Columns } from "../cells/showable";
import type { LookedOver } from "../nouns/findings/lookedOver";
import type { Line, Output } from "../nouns/line";
import type { Reading } from "../nouns/reading";
import { lookOver } from "../questions/lookOver";
import { lookedOverText } from "../words/lookedOver";
import { LISTED_KINDS, NUMBERS_READ, READING_LABELS } from "../words/readingLabel";
import { readingText, sheetRow } from "../words/readingText";
import { line } from "./figure";
import type { WorksheetFunction } from "./worksheetFunction";

/** LOOKOVER: what in a column or a block needs a look before it is used. */
export const lookOverFunction: WorksheetFunction<LookedOver> = {
  id: "LOOKOVER",
  parameters: [
    { name: "cells", optional: false },
    { name: "show", optional: true },
    { name: "kind", optional: true },
    { name: "lowest_ok", optional: true },
    { name: "highest_ok", optional: true },
  ],
  choices: { kind: ["amount", "date", "label", "per plant"] },
  ask: lookOver,
  shown: (found) => ({
    answer: () => lookedOverText(found),
    lines: [],
    columns: () => columns(found),
    own: absentLines(found),
  }),
};

function columns({ readings, numbers }: LookedOver): Columns {
  const rows = LISTED_KINDS.map((kind) => readings.filter((reading) => reading.kind === kind)).flatMap(kindRow);
  const read = numbers === 0 ? [] : [[NUMBERS_READ, numbers, "", ""]];
  return { header: ["What", "How many", "Where", "Example"], rows: [...rows, ...read], main: 1 };
}

function kindRow(readings: readonly Reading[]): readonly (readonly Output[])[] {
  const [first] = readings;
  if (first === undefined || first.kind === "date-settled") return [];
  return [[READING_LABELS[first.kind], readings.length, where(readings), readingText(first)]];
}

/** So many rows are named. */
const FIRST = 10;

function where(readings: readonly Reading[]): string {
  const rows = [...new Set(readings.map(({ place }) => sheetRow(place)))];
  return rows.length > FIRST ? `${rows.slice(0, FIRST).join(", ")} …` : rows.join(", ");
}

/** A line that is not in the table, as it would count 0, can be asked for all the same. */
function absentLines({ readings, numbers }: LookedOver): readonly Line[] {
  const present = new Set(readings.map(({ kind }) => kind));
  const absent = LISTED_KINDS.filter((kind) => !present.has(kind)).map((kind) => READING_LABELS[kind]);
  return [...absent, ...(numbers === 0 ? [NUMBERS_READ] : [])].map((label) => line(label, "count", () => 0));
}
