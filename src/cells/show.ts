import type { Problem } from "../nouns/problem";
import type { ShownOutputs } from "../nouns/shownOutputs";
import { columnBlock, lineBlock, oneCell, oneColumn, plainBlock, stacked } from "./blocks";
import type { Columns, Showable } from "./showable";

/**
 * What a cell shows for one *show* argument, letter case ignored. Read in this order: answer, table, words, say,
 * cautions, the function's own words, labels of the table, names of its rows.
 *
 * @param show the text typed, null for the answer
 * @returns one cell, one column, or the whole table; a Problem that lists what can be shown, or that says why the one
 *   number asked for is missing
 */
export function show(showable: Showable, show: string | null): ShownOutputs | Problem {
  const asked = fold(show ?? "answer");
  const { missing = null } = showable;
  if (missing?.shows.some((word) => fold(word) === asked)) return missing.problem;
  const shown =
    standing(showable, asked) ??
    ownTable(showable, asked) ??
    ownOrLabel(showable, asked) ??
    fromColumns(showable.columns?.(), asked);
  return shown ?? notShown(showable, show ?? "");
}

/** The whole table as it spills. */
export function wholeTable({ columns, lines }: Showable): ShownOutputs {
  const table = columns?.();
  if (table === undefined) return lineBlock(lines, 2);
  const whole = stacked(columnBlock(table), lineBlock(lines, table.header.length));
  return table.last === undefined ? whole : stacked(whole, table.last);
}

function standing(showable: Showable, asked: string): ShownOutputs | null {
  switch (asked) {
    case "answer":
      return answerBlock(showable);
    case "table":
      return wholeTable(showable);
    case "words":
      return oneCell(showable.words(), "text");
    case "say":
      return oneCell(showable.say(), "text");
    case "cautions":
      return oneCell(showable.cautions(), "text");
    default:
      return null;
  }
}

/** One cell, or the block that spills where the result is a list. */
function answerBlock(showable: Showable): ShownOutputs {
  const { answer, answerFormat = "text" } = showable;
  if (answer === null) return wholeTable(showable);
  const shown = answer();
  return typeof shown === "object" ? plainBlock(shown) : oneCell(shown, answerFormat);
}

function ownTable({ tables = {} }: Showable, asked: string): ShownOutputs | null {
  const found = Object.entries(tables).find(([word]) => fold(word) === asked);
  return found === undefined ? null : found[1]();
}

function ownOrLabel({ own, lines }: Showable, asked: string): ShownOutputs | null {
  const line = [...own, ...lines].find(({ label }) => fold(label) === asked);
  return line === undefined ? null : oneCell(line.value(), line.format);
}

function fromColumns(columns: Columns | undefined, asked: string): ShownOutputs | null {
  if (columns === undefined) return null;
  const { header, rows, main, formats } = columns;
  const at = header.findIndex((label) => fold(label) === asked);
  if (at >= 0) {
    const cells = rows.map((row) => row[at] ?? "");
    return oneColumn(cells, formats?.[at] ?? "text");
  }
  const row = rows.find(([name]) => fold(String(name)) === asked);
  return row === undefined || main === null ? null : oneCell(row[main] ?? "", formats?.[main] ?? "text");
}

function notShown(showable: Showable, given: string): Problem {
  const foreign = showable.foreign.find(({ word }) => fold(word) === fold(given));
  if (foreign !== undefined) {
    return { problem: "show-elsewhere", given, argument: foreign.argument, placesOn: foreign.placesOn };
  }
  const labels = [...showable.own, ...showable.lines].map(({ label }) => label);
  const columns = showable.columns?.();
  const names = columns?.main == null ? [] : columns.rows.map(([name]) => String(name));
  return {
    problem: "unknown-show",
    given,
    allowed: [
      "answer",
      "table",
      "words",
      "say",
      "cautions",
      ...Object.keys(showable.tables ?? {}),
      ...labels,
      ...(columns?.header ?? []),
      ...names,
    ],
  };
}

function fold(text: string): string {
  return text.trim().replace(/\s+/g, " ").toLowerCase();
}
