import fc from "fast-check";
import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import type { CellRange } from "../../src/nouns/cellRange";
import type { LookedOver } from "../../src/nouns/findings/lookedOver";
import { isProblem } from "../../src/nouns/problem";
import { lookOver } from "../../src/questions/lookOver";
import { anyCell } from "../ranges/anyCell";
import { block } from "../ranges/column";
import { cleanLog, type LogRow, nuisances } from "./smallLog";

const HEADINGS = ["date", "plant", "mulch", "fruit", "grams"];

function over(cells: CellRange): LookedOver {
  const found = lookOver({ cells });
  if (isProblem(found)) throw new Error(found.problem);
  return found;
}

/** Up to five different nuisances, each in a row of its own; never in the last one, as empty rows at the end are not there. */
const slips = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 5 }),
    fc.uniqueArray(fc.constantFrom(...Object.keys(nuisances)), { minLength: 5, maxLength: 5 }),
  )
  .map(([rows, names]) => new Map(rows.map((row, at) => [row, names[at] ?? ""])));

it("every nuisance of METHODS 3 that is to be listed is listed, at its cell", () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(cleanLog, slips, (log, chosen) => {
      const rows: LogRow[] = [HEADINGS];
      const wanted: string[] = [];
      for (const [at, row] of log.entries()) {
        const nuisance = nuisances[chosen.get(at) ?? ""];
        if (nuisance !== undefined) {
          const [down, across] = nuisance.listed;
          wanted.push(`${rows.length + down + 1} ${across + 1} ${nuisance.kind}`);
          seen.add(chosen.get(at) ?? "");
        }
        rows.push(...(nuisance?.rows(row) ?? [row]));
      }
      const { readings } = over(block(rows));
      const listed = new Set(readings.map(({ kind, place }) => `${place.row} ${place.column} ${kind}`));
      expect(wanted.filter((one) => !listed.has(one))).toEqual([]);
    }),
    { numRuns: 10_000, seed: 45 },
  );
  expect(seen.size).toBe(Object.keys(nuisances).length);
}, 60_000);

it("a clean log needs no look", () => {
  fc.assert(
    fc.property(cleanLog, (log) => {
      expect(over(block([HEADINGS, ...log])).needLook).toBe(0);
    }),
    { numRuns: 500, seed: 46 },
  );
});

it("any block: no exception, and every reading has its place", () => {
  const row = fc.array(anyCell, { minLength: 3, maxLength: 3 });
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
      const found = over(block(rows as Cell[][]));
      expect(found.needLook).toBeLessThanOrEqual(found.cells);
      expect(found.readings.every(({ place }) => place.row >= 1 && place.row <= rows.length)).toBe(true);
    }),
    { numRuns: 3000, seed: 47 },
  );
});
