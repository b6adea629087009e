import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { theDesk } from "../../../../src/answers/theDesk";
import { logHeadings } from "../../../../src/host/practice/workbook/cleanLog";
import { messyLog } from "../../../../src/host/practice/workbook/messyLog";
import type { Cell } from "../../../../src/nouns/cell";
import { plantRows } from "../../../../src/pane/check/clean/plantRows";
import { rolesOf } from "../../../../src/pane/check/clean/roles";
import { csvRows } from "../../../functions/demoLog";
import { cleanLog, nuisances } from "../../../questions/smallLog";
import { seeded } from "../../../seeded";
import { cellsOf, cleaned, lookedOver } from "./looked";

type Rows = readonly (readonly Cell[])[];

/** TALLYPICKS of a log with those headings: what is the same in a log and in its clean copy. */
function totals(rows: Rows, amounts: string) {
  const column = (heading: string) => {
    const at = (rows[0] ?? []).indexOf(heading);
    return { argument: heading, cells: rows.map((row) => [row[at] ?? null]), corner: null, zerosVerified: true };
  };
  const reply = theDesk.ask("TALLYPICKS", [column("plant"), column("date"), column(amounts), null, column("mulch")]);
  if ("problem" in reply || reply.finding.finding !== "pick-tally") return reply;
  return reply.finding.plants.map(({ plant, status, picked, picks, weightsMissing, nothingRead, first, last }) => ({
    plant: plant.replaceAll(" ", ""),
    ...{ status, picked, picks, weightsMissing, nothingRead, first, last },
  }));
}

describe("the messy log of Marlpit Corner", () => {
  const messy: Rows = [logHeadings, ...messyLog.map((row) => logHeadings.map((_, at): Cell => row[at] ?? null))];
  const table = cleaned(messy);
  const clean = cellsOf(table);

  it.each(["grams", "fruit"])("comes to the same %s per plant in its clean copy", (amounts) => {
    expect(totals(clean, amounts)).toEqual(totals(messy, amounts));
  });

  it("leaves nothing to be converted: a second copy changes nothing", () => {
    expect(clean).toHaveLength(1 + 331 - 3);
    const again = cleaned(clean);
    expect(cellsOf(again)).toEqual(clean);
    expect(again.changes.filter(({ became }) => became !== "left as it stands")).toEqual([]);
  });

  it("one row per plant: the demo's own totals after METHODS' rules, for grams and for fruit, lost in both", () => {
    const rows = plantRows(table, rolesOf(table.columns), theDesk);
    if (rows === null || typeof rows === "string") throw new Error(String(rows));
    const [header = [], ...plants] = rows.map((row) => row.map((cell) => cell?.content ?? null));
    expect(header).toEqual(["Plant", "Treatment", "Bed", "fruit", "grams", "Picks", "First", "Last", "Status"]);
    const [, ...expected] = csvRows("demoLogMessyTotals");
    const found = Object.fromEntries(
      plants.map(([plant, , , fruit, grams, , , , status]) => [plant, [grams, fruit, status]]),
    );
    const wanted = expected.map(([plant = "", grams, fruit, missing]) => {
      if (plant === "B2-1" || plant === "B4-3") return [plant, ["lost", "lost", "lost"]];
      return [plant, [Number(grams), Number(fruit), missing === "0" ? "ok" : `grams missing (${missing})`]];
    });
    expect(found).toEqual(Object.fromEntries(wanted));
  });
});

/** A log with some of its rows kept in one of the ways of METHODS 3. */
const messyOnes = fc.tuple(cleanLog, fc.integer({ min: 0, max: 0xffffffff })).map(([log, seed]): Rows => {
  const draw = seeded(seed);
  const ways = Object.values(nuisances);
  const rows = log.flatMap((row) => {
    const way = draw(4) === 0 ? ways[draw(ways.length)] : undefined;
    return way === undefined ? [row] : way.rows(row);
  });
  return [["date", "plant", "mulch", "fruit", "grams"], ...rows];
});

it("any log comes to the same in its clean copy, which a second copy leaves alone (1 000 logs)", () => {
  fc.assert(
    fc.property(messyOnes, (messy) => {
      const clean = cellsOf(cleaned(messy));
      for (const amounts of ["grams", "fruit"]) expect(totals(clean, amounts)).toEqual(totals(messy, amounts));
      const again = cleaned(clean);
      expect(cellsOf(again)).toEqual(clean);
    }),
    { numRuns: 1000, seed: 6 },
  );
}, 120_000);

it("every cell of a log is in its copy as it stood, or is listed (1 000 logs)", () => {
  fc.assert(
    fc.property(messyOnes, (messy) => {
      const { rows, changes } = cleaned(messy);
      const told = new Set(changes.map(({ where }) => where));
      const leftOut = changes.filter(({ became }) => became === "left out").map(({ where }) => Number(where.slice(1)));
      const kept = numbered(messy).filter(({ row, at }) => !leftOut.includes(at) && row.some((cell) => cell !== null));
      expect(rows).toHaveLength(kept.length);
      const unlisted = kept.flatMap(({ row, at }, index) =>
        row.flatMap((cell, column) => {
          const there = rows[index]?.[column]?.content ?? null;
          const place = `${"ABCDE"[column]}${at}`;
          return isAsItStood(cell, there) || told.has(place) ? [] : [place];
        }),
      );
      expect(unlisted).toEqual([]);
      const { readings } = lookedOver(messy).found;
      const doubtful = readings.filter(({ kind }) => kind === "unreadable" || kind === "odd-size");
      for (const { place } of doubtful) expect(told).toContain(place.cell);
    }),
    { numRuns: 1000, seed: 7 },
  );
}, 120_000);

/** Rows below the heading with their number in the sheet. */
function numbered(rows: Rows) {
  return rows.map((row, at) => ({ row, at: at + 1 })).slice(1);
}

function isAsItStood(cell: Cell, there: Cell): boolean {
  return there === cell || (typeof cell === "string" && there === cell.trim());
}
