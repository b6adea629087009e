import { type NewCell, type PlacedCells, textCell } from "../../host/newSheet";
import type { NewChart, OwnSheet } from "../../host/ownSheet";
import { dayOf } from "../../nouns/day";
import type { Report, ReportResult } from "../../nouns/report";
import { listText } from "../../words/list";
import { splitSentences } from "../../words/report/splitSentences";
import { spokenDay } from "../../words/spokenDay";
import { addressOf } from "../address";
import { filledLines } from "./filledLines";
import { chartRows, reportChart } from "./reportChart";
import { reportTable } from "./reportTable";

/** A letter of a heading is about so many pixels wide, and a cell has some room beside its text. */
const letter = 7.5;
const beside = 20;
const narrowest = 64;
const firstColumn = 170;

/** A part of the sheet: rows of cells from column A on; those of a result are its table. */
interface Part {
  readonly rows: readonly (readonly NewCell[])[];
  readonly result?: ReportResult;
}

/**
 * The report as a sheet: title, question and answer, how the trial was laid out, then for each result its table, its
 * chart, what came out and how sure that is; at last what could fool, what next, and safety. Labels are texts.
 *
 * @param day on which it is made, as the spreadsheet's day number
 */
export function reportSheet(report: Report, day: number): OwnSheet {
  const { title, question, results } = report;
  const parts = [
    { rows: [[textCell(title, { bold: true })]] },
    headed("The question", [question]),
    headed("The answer in short", ...results.map(({ say }) => say)),
    headed("How the trial was laid out", report.laidOut, [notSaid(report.missing)]),
    ...results.flatMap((result) => resultParts(result, results.length > 1)),
    listed("What could fool you", report.couldFool),
    listed("What next", [...new Set(results.map(({ next }) => next.join(" ")))]),
    listed("Safety", report.safety),
    { rows: [[textCell(`Made by Fairbed from the cells as they stood on ${spokenDay(dayOf(day))}.`)]] },
  ];
  return { name: "Report", widths: widthsFor(results), ...placed(parts.filter(({ rows }) => rows.length > 0)) };
}

function resultParts(result: ReportResult, several: boolean): readonly Part[] {
  const { about, compared, table, finding, howSure } = result;
  return [
    headed(several ? about : "What was compared", compared),
    { rows: reportTable(table), result },
    headed("What came out", finding),
    headed("How sure", howSure),
  ];
}

/** A heading and paragraphs below it; without a sentence there is no heading either. */
function headed(heading: string, ...paragraphs: readonly (readonly string[])[]): Part {
  const lines = paragraphs.flatMap(filledLines);
  if (lines.length === 0) return { rows: [] };
  return { rows: [heading, ...lines].map((line, at) => [textCell(line, { bold: at === 0 })]) };
}

/** Paragraphs that stand for themselves, each with a mark before it where there are several. */
function listed(heading: string, paragraphs: readonly string[]): Part {
  const mark = paragraphs.length > 1 ? "• " : "";
  return headed(heading, ...paragraphs.map((paragraph) => splitSentences(`${mark}${paragraph}`)));
}

/** What METHODS 9.4 asks of a complete report and nobody said. */
function notSaid(missing: readonly string[]): string {
  return missing.length === 0 ? "" : `Not said, so this report is not complete: ${listText(missing)}.`;
}

/** The parts below each other, an empty row between them. */
function placed(parts: readonly Part[]): Pick<OwnSheet, "blocks" | "tables" | "charts"> {
  const blocks: PlacedCells[] = [];
  const tables: string[] = [];
  const charts: NewChart[] = [];
  let row = 1;
  for (const { rows, result } of parts) {
    blocks.push({ address: `A${row}`, rows });
    const chart = result === undefined ? null : reportChart(result, row);
    if (result !== undefined) tables.push(`A${row}:${lastCell(row, rows)}`);
    if (chart !== null) charts.push(chart);
    row += rows.length + 1 + (chart === null ? 0 : chartRows(chart.bars.length) + 1);
  }
  return { blocks, tables, charts };
}

function lastCell(row: number, rows: Part["rows"]): string {
  return addressOf({ row: row + rows.length - 1, column: rows[0]?.length ?? 1 });
}

/** Each column as wide as the longest of its headings needs; the first holds names. */
function widthsFor(results: readonly ReportResult[]): readonly number[] {
  const tables = results.map(({ table }) => table);
  const count = Math.max(...tables.map(({ columns }) => columns.length));
  return Array.from({ length: count }, (_, at) => {
    if (at === 0) return firstColumn;
    const texts = tables.flatMap(({ columns, rows }) => [
      columns[at]?.heading ?? "",
      ...rows.map((cells) => cells[at]).filter((cell) => typeof cell === "string"),
    ]);
    return Math.max(narrowest, ...texts.map((text) => Math.round(text.length * letter) + beside));
  });
}
