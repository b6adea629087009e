import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import { tallyPicks } from "../../src/questions/tallyPicks";
import { found, given } from "./range";

/** A log whose rows each hold a plant and its mulch, with 4 g picked. */
const tally = (...rows: readonly (readonly [plant: string, mulch: Cell])[]) =>
  tallyPicks(
    given({
      plants: rows.map(([plant]) => plant),
      amounts: rows.map(() => 4),
      treatments: rows.map(([, mulch]) => mulch),
    }),
  );

it("plants of which half have two treatments keep the commoner one, with a note", () => {
  const { plants } = found(tally(["B1", "Straw"], ["B1", "Bare"], ["B1", "Bare"], ["B2", "Straw"]));
  expect(plants.map(({ treatment }) => treatment)).toEqual(["Bare", "Straw"]);
  const names = [
    { name: "Bare", rows: 2 },
    { name: "Straw", rows: 1 },
  ];
  expect(plants.map(({ notes }) => notes)).toEqual([[{ note: "two-names", of: "treatment", names }], []]);
});

it("a row of totals is no plant: two of three plants are most of them", () => {
  const rows = [
    ["B1", "Straw"],
    ["B1", "Bare"],
    ["B2", "Straw"],
    ["B2", "Bare"],
    ["B3", "Bare"],
    ["Week total", null],
  ] as const;
  expect(tally(...rows)).toEqual({
    problem: "most-have-two-names",
    of: "treatment",
    plant: "B1",
    names: ["Straw", "Bare"],
  });
});
