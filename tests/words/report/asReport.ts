import type { Report, ReportResult } from "../../../src/nouns/report";
import { textsOf } from "../../../src/words/report/textsOf";

/** A report and its three texts as an approved file shows them. */
export function asReport(report: Report): string {
  const { title, question, laidOut, results, couldFool, safety, missing } = report;
  return [
    part("title", [title]),
    part("question", [question]),
    part("laid out", laidOut),
    ...results.flatMap(resultParts),
    part("could fool", couldFool),
    part("safety", safety),
    part("missing", missing),
    ...textsOf(report).map(({ name, text }) => `\n== ${name} ==\n${text}`),
    "",
  ].join("\n");
}

function resultParts({ about, compared, table, unit, bars, finding, say, ...rest }: ReportResult): readonly string[] {
  return [
    `-- ${about} --`,
    part("compared", compared),
    part(
      "table",
      [table.columns.map(({ heading }) => heading), ...table.rows].map((row) => row.join(" | ")),
    ),
    part(
      `bars in ${unit}`,
      bars.map((bar) => `${bar.name} ${bar.average} (${bar.plants})`),
    ),
    part("finding", finding),
    part("say", say),
    part("how sure", rest.howSure),
    part("how sure, briefly", rest.howSureBriefly),
    part("next", rest.next),
  ];
}

function part(title: string, lines: readonly string[]): string {
  return [`${title}:`, ...lines.map((line) => `  ${line}`)].join("\n");
}
