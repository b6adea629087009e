import fc from "fast-check";
import { expect, it } from "vitest";
import { theDesk } from "../../src/answers/theDesk";
import type { Cell } from "../../src/nouns/cell";
import type { Finding } from "../../src/nouns/finding";

/** A column of amounts that may name units, below a heading that names none. */
const columns = fc.array(
  fc.oneof(
    fc.integer({ min: 0, max: 4000 }),
    fc.double({ min: 0.1, max: 9, noNaN: true }).map((number) => Number(number.toFixed(2))),
    fc.tuple(fc.integer({ min: 1, max: 900 }), fc.constantFrom("g", "oz", "cm")).map(([one, unit]) => `${one} ${unit}`),
    fc.tuple(fc.integer({ min: 1, max: 90 }), fc.constantFrom("kg", "lb")).map(([one, unit]) => `${one / 10}${unit}`),
  ),
  { minLength: 2, maxLength: 8 },
);

function asked(id: string, given: Readonly<Record<string, readonly Cell[]>>): Finding {
  const parameters = theDesk.parameters(id) ?? [];
  const ranges = parameters.map(({ name }) => {
    const column = given[name];
    return column ? { argument: name, cells: column.map((cell) => [cell]), corner: null, zerosVerified: true } : null;
  });
  const reply = theDesk.ask(id, ranges);
  if ("problem" in reply) throw new Error(reply.message);
  return reply.finding;
}

/** The amount of each row by three functions; null where it is not read. */
function readings(cells: readonly Cell[]) {
  const amounts = ["harvest", ...cells];
  const plants = ["plant", ...cells.map((_, at) => `P${at + 1}`)];
  const tally = asked("TALLYPICKS", { plants, amounts });
  const looked = asked("LOOKOVER", { cells: amounts, kind: ["amount"] });
  if (tally.finding !== "pick-tally" || looked.finding !== "looked-over") throw new Error("another finding");
  const plain = asked("PLAINNUMBER", { cells, ...(tally.unit === null ? {} : { unit: [tally.unit] }) });
  if (plain.finding !== "plain-numbers") throw new Error("another finding");
  return {
    unit: tally.unit,
    lookedUnit: looked.columns[0]?.unit ?? null,
    tallied: tally.plants.map(({ nothingRead, picked }) => (nothingRead ? null : picked)),
    looked: [...(looked.columns[0]?.values ?? [])].map((value) => (Number.isNaN(value) ? null : value)),
    plain: plain.cells.flat().map((cell) => (cell.is === "number" ? cell.value : null)),
  };
}

it("a column whose heading names no unit is read alike by TALLYPICKS and LOOKOVER, in one unit (5 000 columns)", () => {
  fc.assert(
    fc.property(columns, (cells) => {
      const { unit, lookedUnit, tallied, looked } = readings(cells);
      expect(lookedUnit).toBe(unit);
      expect(looked).toEqual(tallied);
    }),
    { numRuns: 5000, seed: 8 },
  );
}, 60_000);

it("PLAINNUMBER, asked for that unit, gives the same numbers wherever one was read (5 000 columns)", () => {
  fc.assert(
    fc.property(columns, (cells) => {
      const { unit, tallied, plain } = readings(cells);
      if (unit === null) return;
      for (const [at, value] of tallied.entries()) {
        if (value !== null) expect(plain[at]).toBe(value);
      }
    }),
    { numRuns: 5000, seed: 9 },
  );
}, 60_000);

it("what stands there in METHODS 3: kilograms typed among grams are grams", () => {
  expect(readings([180, "0.235kg", 300])).toMatchObject({
    unit: "g",
    tallied: [180, 235, 300],
    looked: [180, 235, 300],
  });
});
