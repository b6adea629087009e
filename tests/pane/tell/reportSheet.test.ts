import { describe, expect, it } from "vitest";
import type { NewCell, PlacedCells } from "../../../src/host/newSheet";
import type { OwnSheet } from "../../../src/host/ownSheet";
import { addressOf, firstSpot } from "../../../src/pane/address";
import { reportSheet } from "../../../src/pane/tell/reportSheet";
import { reportOf } from "../../../src/words/report/reportOf";
import { sentencesOf, wordsOf } from "../../words/plainEnglish";
import { marlpitNotes, reportFrom, telling, typicalTellable } from "../../words/report/tellable";
import { sheetPicture } from "./sheetPicture";

/** Digits of a number in an approved text; a change of method may turn the sixteenth. */
const DIGITS = 12;
/** 28 November 2026. */
const day = 46_354;
const inBeds = "Marlpit Corner, straw against bare soil, in beds";
const four = "COMPAREMANY four mulches in beds against bare soil";
const label = "Follow the product label: which crop, how much, how many days before harvest.";
const every = typicalTellable.map(([title, finding]) => {
  const report = reportOf(telling([finding], { notes: marlpitNotes }));
  return [title, report, reportSheet(report, day)] as const;
});

it.each([
  ["the-demo-trial", [inBeds], { notes: marlpitNotes, drawNumber: 1431 }],
  ["four-mulches", [four], { notes: marlpitNotes, drawNumber: 1431 }],
  ["two-results-with-a-safety-line", [inBeds, four], { notes: marlpitNotes, safety: [label] }],
  ["no-notes", ["two plants each"], {}],
  ["six-crops", ["MANYTRIALS six crops"], { notes: marlpitNotes }],
  ["straw-may-pay", ["WORTHIT straw may or may not pay"], { notes: marlpitNotes }],
  ["totals-only", ["TOTALSONLY berries under two nets"], {}],
] as const)("%s: the approved report sheet", async (name, titles, more) => {
  const sheet = reportSheet(reportFrom(titles, more), day);
  await expect(asText(sheet)).toMatchFileSnapshot(`approved/${name}.txt`);
});

it.each([
  ["the-demo-trial", [inBeds]],
  ["four-mulches", [four]],
] as const)("%s: the approved picture of the report sheet", async (name, titles) => {
  const sheet = reportSheet(reportFrom(titles, { notes: marlpitNotes, drawNumber: 1431 }), day);
  await expect(sheetPicture(sheet)).toMatchFileSnapshot(`approved/${name}.svg`);
});

describe.each(every)("%s", (_, report, sheet) => {
  const cells = cellsOf(sheet);

  it("tells every sentence of the report, in sentences of at most 25 words", () => {
    const told = [...cells.values()].map(({ content }) => String(content)).join(" ");
    const [result] = report.results;
    const sentences = [report.question, ...report.laidOut, ...(result?.finding ?? []), ...(result?.howSure ?? [])];
    for (const sentence of sentences) expect(told).toContain(sentence);
    const long = [...cells.values()].flatMap(({ content }) => sentencesOf(String(content)));
    expect(long.filter((sentence) => wordsOf(sentence).length > 25)).toEqual([]);
  });

  it("writes nothing as a formula", () => {
    expect([...cells.values()].filter(({ kind }) => kind === "formula")).toEqual([]);
  });

  it("has its table where it says, under headings that differ", () => {
    for (const address of sheet.tables) {
      const [headings = [], ...rows] = spotsIn(address);
      const texts = headings.map((at) => String(cells.get(at)?.content).toLowerCase());
      expect(new Set(texts).size).toBe(headings.length);
      expect(rows).toHaveLength(report.results[0]?.table.rows.length ?? 0);
    }
  });

  it("has a chart whose bars stand in the table, over cells that are empty", () => {
    for (const { names, figures, bars, place } of sheet.charts) {
      const contents = (address: string) => spotsIn(address).flatMap((row) => row.map((at) => cells.get(at)?.content));
      expect(contents(names)).toEqual(bars.map(({ name }) => name));
      expect(contents(figures)).toEqual(bars.map(({ figure }) => figure));
      expect(contents(place).filter((content) => content !== undefined)).toEqual([]);
    }
  });

  it("has no two blocks over each other", () => {
    const all = sheet.blocks.flatMap((block) => spotsOf(block).map(([at]) => at));
    expect(new Set(all).size).toBe(all.length);
  });
});

it("what nobody said is named, and nothing is made up in its place", () => {
  const text = asText(reportSheet(reportFrom(["two plants each"]), day));
  expect(text).toContain("Not said, so this report is not complete: the crop, the place, the season, the measure");
  expect(text).not.toMatch(/We grew|We drew/);
});

it("a figure that is missing leaves the chart out: a gap would look like a zero", () => {
  const sheet = reportSheet(reportFrom(["no usable plants"]), day);
  expect([sheet.tables.length, sheet.charts]).toEqual([1, []]);
});

/** The sheet as it can be read: each row with its cells, bold ones in stars; then its tables and charts. */
function asText({ name, widths, blocks, tables, charts }: OwnSheet): string {
  const rows = blocks.flatMap(({ address, rows: lines }) =>
    lines.map((line, down) => {
      const row = String(firstSpot(address).row + down).padStart(3);
      return `${row}  ${line.map(cellText).join(" | ")}`.trimEnd();
    }),
  );
  return [
    `sheet ${name}, widths ${widths.join(" ")}`,
    ...rows,
    ...tables.map((address) => `table ${address}`),
    ...charts.map(({ title, bars, format, names, figures, place }) => {
      const each = bars.map((bar) => `${bar.usual ? "usual " : ""}${bar.name} ${bar.figure}`);
      return `chart ${place} "${title}" as ${format}, names ${names}, figures ${figures}: ${each.join(", ")}`;
    }),
    "",
  ].join("\n");
}

function cellText(cell: NewCell | null): string {
  if (cell === null || cell.kind === "blank") return "";
  const look = cell.format === "General" ? "" : ` [${cell.format}]`;
  const content = typeof cell.content === "number" ? Number(cell.content.toPrecision(DIGITS)) : cell.content;
  return `${cell.bold ? `*${content}*` : content}${look}`;
}

function cellsOf({ blocks }: OwnSheet): ReadonlyMap<string, NewCell> {
  return new Map(
    blocks.flatMap(spotsOf).flatMap(([at, cell]) => (cell === null || cell.kind === "blank" ? [] : [[at, cell]])),
  );
}

function spotsOf({ address, rows }: PlacedCells): readonly (readonly [string, NewCell | null])[] {
  const { row, column } = firstSpot(address);
  return rows.flatMap((cells, down) =>
    cells.map((cell, across) => [addressOf({ row: row + down, column: column + across }), cell] as const),
  );
}

/** The addresses of a block, row by row. */
function spotsIn(block: string): readonly (readonly string[])[] {
  const [first = "", last = first] = block.split(":");
  const [from, to] = [firstSpot(first), firstSpot(last)];
  return Array.from({ length: to.row - from.row + 1 }, (_, down) =>
    Array.from({ length: to.column - from.column + 1 }, (__, across) =>
      addressOf({ row: from.row + down, column: from.column + across }),
    ),
  );
}
