import fc from "fast-check";
import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { tallyPicks } from "../../src/questions/tallyPicks";
import { found, given } from "../questions/range";

/** One row of a clean log. */
interface Row {
  readonly plant: string;
  readonly date: string;
  readonly treatment: string;
  readonly grams: number;
}

/** A log as columns of cells. */
type Log = Readonly<Record<"plants" | "dates" | "treatments" | "amounts", readonly Cell[]>>;

/** Which of the ways to write a cell is taken. */
type Choice = () => number;

const plants = ["B1-1", "B1-2", "B2-1", "B2-2", "B3-1", "B3-2"];
const treatmentOf = (plant: string) => (plant.endsWith("1") ? "Bare soil" : "Straw");

const rowOf = fc.record({
  plant: fc.constantFrom(...plants),
  day: fc.integer({ min: 1, max: 28 }),
  grams: fc.integer({ min: 0, max: 1999 }),
});
const cleanLog = fc.array(rowOf, { minLength: 1, maxLength: 12 }).map((rows) =>
  rows.map(
    ({ plant, day, grams }): Row => ({
      plant,
      date: `2023-07-${String(day).padStart(2, "0")}`,
      treatment: treatmentOf(plant),
      grams,
    }),
  ),
);

/*
 * What METHODS 3 and 4.1 declare to be read, each a way to write one clean cell. Numbers with three digits after a comma
 * are left to kilograms: "1,250" is declared doubtful.
 */
const amounts: readonly ((grams: number) => Cell)[] = [
  (grams) => grams,
  (grams) => String(grams),
  (grams) => `${grams} g`,
  (grams) => `${grams}gr`,
  (grams) => `${grams / 1000}kg`,
  (grams) => `${String(grams / 1000).replace(".", ",")} kg`,
  (grams) => `${grams}*`,
  (grams) => `approx ${grams}`,
  (grams) => `~${grams}`,
  (grams) => `${grams}?`,
  (grams) => `${grams},0`,
  (grams) => (grams > 1 ? `${grams - 1}+1` : grams),
  (grams) => (grams === 0 ? "none" : grams),
  (grams) => (grams === 0 ? "–" : grams),
  (grams) => ` ${grams} `,
];
const labels: readonly ((label: string) => Cell)[] = [
  (label) => label,
  (label) => label.toLowerCase(),
  (label) => ` ${label.toUpperCase()} `,
];
const plantLabels: readonly ((label: string) => Cell)[] = [
  ...labels,
  (label) => label.replace("-", " - "),
  (label) => label.replace("-", "- "),
];
const treatmentLabels: readonly ((label: string) => Cell)[] = [...labels, (label) => label.replace(" ", "  ")];
const dates: readonly ((date: string) => Cell)[] = [
  (date) => date,
  // Excel numbers 1 July 2023 as 45108 (R: as.integer(as.Date("2023-07-01")) + 25569)
  (date) => 45_107 + Number(date.slice(-2)),
  (date) => String(45_107 + Number(date.slice(-2))),
  (date) => `${Number(date.slice(-2))} July 2023`,
  (date) => `July ${Number(date.slice(-2))}, 2023`,
  (date) => `${date} 07:30`,
];

function write<Value>(ways: readonly ((value: Value) => Cell)[], value: Value, choice: number): Cell {
  return ways[choice % ways.length]?.(value) ?? null;
}

/** The log with a nuisance in any cell, and rows between that are declared to be left out. */
function withNuisances(rows: readonly Row[], choose: Choice): Log {
  const written = rows.flatMap(({ plant, date, treatment, grams }): readonly (readonly Cell[])[] => {
    const row = [
      write(plantLabels, plant, choose()),
      write(dates, date, choose()),
      write(treatmentLabels, treatment, choose()),
      write(amounts, grams, choose()),
    ];
    const between = [[], [[null, null, null, null]], [["Week total", null, null, 12_345]], [[null, null, null, 777]]];
    return [row, ...(between[choose() % 12] ?? [])];
  });
  return columns(written);
}

function clean(rows: readonly Row[]): Log {
  return columns(rows.map(({ plant, date, treatment, grams }) => [plant, date, treatment, grams]));
}

function columns(rows: readonly (readonly Cell[])[]): Log {
  const column = (at: number, heading: string) => [heading, ...rows.map((row) => row[at] ?? null)];
  return {
    plants: column(0, "plant"),
    dates: column(1, "date"),
    treatments: column(2, "mulch"),
    amounts: column(3, "grams"),
  };
}

/** All that a tally knows of its plants, spellings and notes aside. */
function totals(log: Log) {
  return found(tallyPicks(given(log))).plants.map(({ plant, treatment, picked, picks, first, last, status }) => ({
    plant: plant.toUpperCase().replaceAll(" ", ""),
    treatment: treatment?.toUpperCase().replace(/\s+/g, " "),
    ...{ picked, picks, first, last, status },
  }));
}

/** Whole numbers below a bound, the same every time (Park and Miller 1988, minimal standard generator). */
function drawing(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}

function drawnLog(draw: (below: number) => number): readonly Row[] {
  return Array.from({ length: 1 + draw(8) }, (): Row => {
    const plant = plants[draw(plants.length)] ?? "";
    const date = `2023-07-${String(1 + draw(28)).padStart(2, "0")}`;
    return { plant, date, treatment: treatmentOf(plant), grams: draw(10) === 0 ? 0 : draw(2000) };
  });
}

it("what METHODS 3 declares to be read gives the totals of the clean log, whatever is chosen (10 000 logs)", () => {
  const draw = drawing(3);
  const differing = Array.from({ length: 10_000 }, () => drawnLog(draw)).flatMap((rows) => {
    const messy = withNuisances(rows, () => draw(60));
    const [found, expected] = [totals(messy), totals(clean(rows))].map((all) => JSON.stringify(all));
    return found === expected ? [] : [{ messy, found, expected }];
  });
  expect(differing).toEqual([]);
}, 120_000);

it("a lost-word anywhere marks its plant lost and changes no other plant", () => {
  const word = fc.constantFrom("lost", "Dead (slugs)", "died – slugs", "stolen", "lost 14 July");
  fc.assert(
    fc.property(cleanLog, word, fc.nat(), (rows, lost, where) => {
      const log = clean(rows);
      const at = 1 + (where % (rows.length + 1));
      const insert = (column: readonly Cell[], cell: Cell) => [...column.slice(0, at), cell, ...column.slice(at)];
      const withLoss = {
        plants: insert(log.plants, "B1-1"),
        dates: insert(log.dates, "2023-07-28"),
        treatments: insert(log.treatments, "Bare soil"),
        amounts: insert(log.amounts, lost),
      };
      const others = (tallied: ReturnType<typeof totals>) =>
        new Map(tallied.flatMap(({ plant, ...rest }) => (plant === "B1-1" ? [] : [[plant, rest]])));
      const after = totals(withLoss);
      expect(others(after)).toEqual(others(totals(log)));
      expect(after.find(({ plant }) => plant === "B1-1")?.status).toBe("lost");
    }),
    { numRuns: 200, seed: 3 },
  );
});
