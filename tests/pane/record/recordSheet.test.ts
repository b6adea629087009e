import { describe, expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import type { NewCell, NewSheet } from "../../../src/host/newSheet";
import type { DrawnLots } from "../../../src/nouns/findings/drawnLots";
import { addressOf, beyond, firstSpot } from "../../../src/pane/address";
import { recordSheet } from "../../../src/pane/record/recordSheet";
import { drawLots } from "../../../src/questions/drawLots";
import { found, given } from "../../questions/range";
import reference from "../../reference/drawLots.json";

const mulches = ["Bare soil", "Straw", "Woodchip", "Grass clippings"];

function sheetOf(asked: Parameters<typeof given>[0], measure = "Total per plant (g)"): NewSheet {
  const drawn: DrawnLots = found(drawLots(given({ draw_number: 1431, ...asked })));
  const settled = { question: "Does straw give more?", measure, worthwhile: 0.1, stopDate: 46_264, writtenOn: 46_151 };
  return recordSheet(theDesk, { ...settled, drawn });
}

/** The sheet's cells by address; a cell written twice would be a mistake of the layout. */
function cellsOf({ blocks }: NewSheet): ReadonlyMap<string, NewCell> {
  const cells = new Map<string, NewCell>();
  for (const { address, rows } of blocks) {
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

/** What stands in a column below the list's heading. */
function column(sheet: NewSheet, letter: string, count: number) {
  const cells = cellsOf(sheet);
  return Array.from({ length: count }, (_, at) => cells.get(`${letter}${13 + at}`)?.content ?? null);
}

describe("four mulches, one each in eight beds", () => {
  const sheet = sheetOf({ treatments: mulches, plants_each: 8, beds: 8 });
  const cells = cellsOf(sheet);
  const [plan] = reference.cases.plans;

  it("lists R's plan, with empty columns for the harvest", () => {
    expect(column(sheet, "C", 32)).toEqual(plan?.order);
    expect(column(sheet, "D", 32)).toEqual(plan?.labels);
    expect(column(sheet, "E", 32)).toEqual(Array(32).fill(null));
    expect(column(sheet, "F", 32)).toEqual(Array(32).fill(null));
  });

  it("shows the beds as a grid, spot by spot", () => {
    const row = (at: number) => ["H", "I", "J", "K", "L"].map((letter) => cells.get(`${letter}${at}`)?.content);
    expect(row(13)).toEqual(["Bed", "Spot 1", "Spot 2", "Spot 3", "Spot 4"]);
    expect(row(14)).toEqual(["Bed 1", ...(plan?.order.slice(0, 4) ?? [])]);
    expect(row(21)).toEqual(["Bed 8", ...(plan?.order.slice(28) ?? [])]);
  });

  it("asks COMPAREMANY over the list, the usual and worthwhile by their cells", () => {
    expect(cells.get("J6")?.content).toBe('=FAIRBED.COMPAREMANY(E12:E44,C12:C44,"answer",B12:B44,E8,,E6)');
    expect(cells.get("H24")?.content).toBe('=FAIRBED.COMPAREMANY(E12:E44,C12:C44,"table",B12:B44,E8,,E6)');
    expect(cells.get("E12")).toMatchObject({ kind: "formula", content: "=E5" });
  });

  it("shows averages with the places that their unit needs", () => {
    const formats = (measure: string) => {
      const spots = cellsOf(sheetOf({ treatments: mulches, plants_each: 8, beds: 8 }, measure));
      return ["I25", "L25", "N25", "O25", "R25"].map((at) => spots.get(at)?.format);
    };
    expect(formats("Total per plant (g)")).toEqual(["0.0%", "0", "0.0", "0.0", "0.000"]);
    expect(formats("Fruits per plant")).toEqual(["0.0%", "0", "0.0", "0.0", "0.000"]);
    expect(formats("Total per plant (kg)")).toEqual(["0.0%", "0", "0.000", "0.000", "0.000"]);
  });

  it("dates what was settled before planting", () => {
    expect(["D4", "D5", "D6", "D7", "D8", "D9"].map((at) => cells.get(at)?.content)).toEqual(Array(6).fill(46_151));
    expect(["E4", "E5", "E6", "E7", "E8", "E9"].map((at) => cells.get(at)?.content)).toEqual([
      "Does straw give more?",
      "Total per plant (g)",
      0.1,
      46_264,
      "Bare soil",
      1431,
    ]);
    expect(cells.get("E6")?.format).toBe("0%");
    expect(cells.get("E7")?.kind).toBe("date");
  });
});

describe("two treatments", () => {
  it("one each in beds stand side by side, each cell at its plant's row", () => {
    const sheet = sheetOf({ treatments: ["Bare soil", "Straw"], plants_each: 8, beds: 8 });
    const cells = cellsOf(sheet);
    expect(cells.get("J6")?.content).toBe('=FAIRBED.COMPARETWO(I24:I32,J24:J32,"answer","beds",E6)');
    expect(["H24", "I24", "J24"].map((at) => cells.get(at)?.content)).toEqual(["Bed", "Bare soil (g)", "Straw (g)"]);
    const order = reference.cases.plans[2]?.order ?? [];
    for (const [letter, name] of [
      ["I", "Bare soil"],
      ["J", "Straw"],
    ]) {
      for (let bed = 0; bed < 8; bed += 1) {
        const row = 13 + 2 * bed + (order[2 * bed] === name ? 0 : 1);
        expect(cells.get(`${letter}${25 + bed}`)?.content).toBe(`=IF(E${row}="","",E${row})`);
      }
    }
  });

  it("as separate plants are compared without beds, and mapped in rows of eight", () => {
    const cells = cellsOf(sheetOf({ treatments: ["Bare soil", "Straw"], plants_each: 6 }));
    expect(cells.get("H14")?.content).toBe("P1 to P8");
    expect(cells.get("H15")?.content).toBe("P9 to P12");
    expect(cells.get("J6")?.content).toBe('=FAIRBED.COMPARETWO(I18:I24,J18:J24,"answer",,E6)');
    expect(cells.get("B13")).toBeUndefined();
  });

  it.each(["None", "12 cm", "Lost rows", "no net"])(
    "a name that cannot head a column is told apart by its label: %s",
    (name) => {
      const cells = cellsOf(sheetOf({ treatments: [name, "Straw"], plants_each: 4 }));
      expect(cells.get("J6")?.content).toBe('=FAIRBED.COMPAREMANY(E12:E20,C12:C20,"answer",,E8,,E6)');
    },
  );

  it("several of each in a bed are compared within beds by COMPAREMANY", () => {
    const cells = cellsOf(sheetOf({ treatments: 2, plants_each: 6, beds: 3 }));
    expect(cells.get("J6")?.content).toBe('=FAIRBED.COMPAREMANY(E12:E24,C12:C24,"answer",B12:B24,E8,,E6)');
  });
});

it("whatever a grower types is text and never a formula", () => {
  const sheet = sheetOf({ treatments: ["=1+1", "+Straw"], plants_each: 4 }, "=2");
  const typed = [...cellsOf(sheet).values()].filter(({ content }) => /^(=1\+1|\+Straw|=2)$/.test(String(content)));
  expect(typed.length).toBeGreaterThan(8);
  expect(new Set(typed.map(({ kind }) => kind))).toEqual(new Set(["text"]));
});
