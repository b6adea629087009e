import type { Output, Outputs } from "../nouns/line";
import type { Problem } from "../nouns/problem";
import { safeOutput } from "./output";
import type { Columns, Showable } from "./showable";

/**
 * What a cell shows for one *show* argument, letter case ignored. Read in this order: answer, table, words, say,
 * cautions, the function's own words, labels of the table, names of its rows.
 *
 * @param show the text typed, null for the answer
 * @returns one cell, one column, or the whole table; a Problem that lists what can be shown, or that says why the one
 *   number asked for is missing
 */
export function show(showable: Showable, show: string | null): Outputs | Problem {
  const asked = fold(show ?? "answer");
  const { missing = null } = showable;
  if (missing?.shows.some((word) => fold(word) === asked)) return missing.problem;
  const shown =
    standing(showable, asked) ??
    showable.tables?.[asked]?.() ??
    ownOrLabel(showable, asked) ??
    fromColumns(showable.columns?.(), asked);
  return shown === null ? notShown(showable, show ?? "") : shown.map((row) => row.map(safeOutput));
}

/** The whole table as it spills. */
export function wholeTable({ columns, lines }: Showable): Outputs {
  const table = columns?.();
  if (table === undefined) return lines.map((line) => [line.label, line.value()]);
  const width = table.header.length;
  const footer = lines.map((line) => [line.label, line.value(), ...Array<Output>(width - 2).fill("")]);
  return [table.header, ...table.rows, ...footer];
}

function standing(showable: Showable, asked: string): Outputs | null {
  switch (asked) {
    case "answer":
      return [[showable.answer()]];
    case "table":
      return wholeTable(showable);
    case "words":
      return [[showable.words()]];
    case "say":
      return [[showable.say()]];
    case "cautions":
      return [[showable.cautions()]];
    default:
      return null;
  }
}

function ownOrLabel({ own, lines }: Showable, asked: string): Outputs | null {
  const line = [...own, ...lines].find(({ label }) => fold(label) === asked);
  return line === undefined ? null : [[line.value()]];
}

function fromColumns(columns: Columns | undefined, asked: string): Outputs | null {
  if (columns === undefined) return null;
  const column = columns.header.findIndex((label) => fold(label) === asked);
  if (column >= 0) return columns.rows.map((row) => [row[column] ?? ""]);
  const row = columns.rows.find(([name]) => fold(String(name)) === asked);
  return row === undefined ? null : [[row[columns.main] ?? ""]];
}

function notShown(showable: Showable, given: string): Problem {
  const foreign = showable.foreign.find(({ word }) => fold(word) === fold(given));
  if (foreign !== undefined) {
    return { problem: "show-elsewhere", given, argument: foreign.argument, placesOn: foreign.placesOn };
  }
  const labels = [...showable.own, ...showable.lines].map(({ label }) => label);
  const columns = showable.columns?.();
  const names = columns?.rows.map(([name]) => String(name)) ?? [];
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
