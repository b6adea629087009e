import { expect, it } from "vitest";
import type { NewCell } from "../../../src/host/newSheet";
import { addressOf, beyond, firstSpot } from "../../../src/pane/address";
import { type Lesson, luckSheet } from "../../../src/pane/luck/luckSheet";

const lesson: Lesson = {
  each: 4,
  unevenness: 0.25,
  lead: 0.3,
  drawNumber: 18,
  invented: true,
  says: "Plants differ. Luck alone does it.",
};

/** The sheet's cells by address; a cell written twice would be a mistake of the layout. */
function cellsOf(asked: Lesson): ReadonlyMap<string, NewCell> {
  const cells = new Map<string, NewCell>();
  for (const { address, rows } of luckSheet(asked).blocks) {
    expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
    for (const [down, row] of rows.entries()) {
      for (const [across, cell] of row.entries()) {
        const spot = addressOf(beyond(firstSpot(address), down, across));
        if (cell === null) continue;
        expect(cells.has(spot), spot).toBe(false);
        cells.set(spot, cell);
      }
    }
  }
  return cells;
}

it("lists the plants with their weights, and deals them by the number in I2", () => {
  const cells = cellsOf(lesson);
  expect(["A1", "B1", "C1", "A2", "A9"].map((at) => cells.get(at)?.content)).toEqual(
    "Plant,Grams,Team,Plant 1,Plant 8".split(","),
  );
  expect(cells.get("C2")?.content).toBe('=FAIRBED.DRAWLOTS(2,4,I2,"Treatment")');
  expect(cells.get("I2")?.content).toBe(18);
  expect(cells.has("A10")).toBe(false);
});

it("a class that weighs its own plants gets an empty column, and is told to fill it", () => {
  const cells = cellsOf({ ...lesson, invented: false });
  expect(cells.has("B2")).toBe(false);
  expect(cells.get("H12")?.content).toMatch(/type the grams into column B/);
  expect(cellsOf(lesson).get("H12")?.content).toMatch(/invented/);
});

it("twenty draws, each over all plants and only once all are weighed", () => {
  const cells = cellsOf({ ...lesson, each: 5 });
  expect(cells.get("E21")?.content).toBe(20);
  expect(cells.get("F21")?.content).toContain('FAIRBED.DRAWLOTS(2,5,E21,"Treatment")="A")*B$2:B$11');
  expect(cells.get("F21")?.content).toMatch(/^=IF\(COUNT\(B\$2:B\$11\)=10,/);
  expect(cells.get("I5")?.content).toBe('=COUNTIF(F2:F21,">="&I4)');
});

it("says what luck alone does", () => {
  const cells = cellsOf(lesson);
  expect(["H10", "H11"].map((at) => cells.get(at)?.content)).toEqual(["Plants differ.", "Luck alone does it."]);
});
