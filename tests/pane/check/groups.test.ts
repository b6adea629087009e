import { expect, it } from "vitest";
import { theDesk } from "../../../src/answers/theDesk";
import type { Cell } from "../../../src/nouns/cell";
import { groupsOf } from "../../../src/pane/check/groups";

function groups(rows: readonly (readonly Cell[])[]) {
  const corner = { sheet: "Log", row: 1, column: 1 };
  const reply = theDesk.ask("LOOKOVER", [{ argument: "cells", cells: rows, corner, zerosVerified: true }]);
  if ("problem" in reply || reply.finding.finding !== "looked-over") throw new Error("refused");
  return groupsOf(reply.finding);
}

const straws = Array.from({ length: 6 }, (_, at): readonly Cell[] => ["Straw", 200 + at]);

it("a name spelt in an odd way in several cells is one line, with how many more there are", () => {
  const found = groups([["mulch", "grams"], ...straws, ["straw", 210], ["straw", 211], ["straw ", 212]]);
  const [names] = found.filter(({ heading }) => heading.startsWith("Names nearly alike"));
  expect(names).toEqual({
    heading: "Names nearly alike: 3",
    needsLook: true,
    lines: [
      {
        cell: "A8",
        where: "A8 and 1 more cell",
        what: "straw (2), Straw (6)",
        advice: "Read as one name. Spell it one way.",
      },
      {
        cell: "A10",
        where: "A10",
        what: "straw (1), Straw (6)",
        advice: "Read as one name. Spell it one way.",
      },
    ],
  });
});

it("what to do about an empty cell follows its column", () => {
  const found = groups([
    ["day", "plant", "mulch", "grams"],
    ["2023-07-01", "B1-1", "Straw", 200],
    [null, "B1-2", "Straw", 210],
    ["2023-07-03", "B1-3", null, 220],
    ["2023-07-04", "B1-4", "Straw", null],
    ["2023-07-05", "B1-5", "Straw", 230],
  ]);
  const advice = found.flatMap(({ lines }) => lines.map((line) => [line.cell, line.advice.split(".")[0]]));
  expect(advice).toEqual([
    ["A3", "Type the date"],
    ["C4", "Type the name"],
    ["D5", "If nothing was ripe, type 0"],
  ]);
});

it("kinds that need a look come first, those that are certain last; nothing is no group", () => {
  const found = groups([["grams"], [200], ["206*"], [0], ["lost"], ["?!"], [190]]);
  expect(found.map(({ heading, needsLook }) => [heading, needsLook])).toEqual([
    ["Unreadable: 1", true],
    ["Lost: 1", false],
    ["Zeros: 1", false],
    ["Marks removed: 1", false],
  ]);
  expect(groups([["grams"], [200], [190]])).toEqual([]);
});
