import { expect, it } from "vitest";
import { isProblem } from "../../src/nouns/problem";
import { plainNumber } from "../../src/questions/plainNumber";
import { block, column } from "../ranges/column";

it("keeps every reading with its place, and counts them in its cautions", () => {
  const found = plainNumber({
    cells: block([
      [1, "2 kg"],
      ["506*", "lost"],
      [0, "forgot"],
    ]),
    unit: column(["g"]),
  });
  if (isProblem(found)) throw new Error(found.problem);
  expect(found).toMatchObject({ finding: "plain-numbers", unit: "g", numbers: 4 });
  expect(found.readings.map(({ kind, place, text }) => [kind, place.cell, text])).toEqual([
    ["unit-converted", "E1", "2 kg"],
    ["mark-removed", "D2", "506*"],
    ["lost", "E2", "lost"],
    ["zero", "D3", "0"],
    ["unreadable", "E3", "forgot"],
  ]);
  expect(found.cautions()).toEqual([{ caution: "C14", count: 2 }]);
});

it("zeros that may be empty cells raise C15", () => {
  const found = plainNumber({ cells: column([0, 5, 0], { zerosVerified: false }) });
  expect(!isProblem(found) && found.cautions()).toEqual([{ caution: "C15", zeros: 2 }]);
});

it("a date that Excel made among amounts is none; a column of such numbers is", () => {
  const found = plainNumber({ cells: column([300, 45_112, 310]) });
  expect(!isProblem(found) && found.cells[1]).toMatchObject([{ is: "refused", problem: { given: "45112" } }]);
  const day = { year: 2023, month: 7, day: 5 };
  const problem = { problem: "not-plain", given: "45112", because: { why: "excel-date", day } };
  expect(!isProblem(found) && found.cells[1]).toEqual([{ is: "refused", problem }]);
  expect(!isProblem(found) && found.readings).toMatchObject([{ kind: "excel-date", day, text: "45112" }]);
  const typed = plainNumber({ cells: column([300, " 45112 ", "45112*", 310, 290]) });
  expect(!isProblem(typed) && typed.cells[1]).toMatchObject([{ is: "refused", problem: { given: "45112" } }]);
  expect(!isProblem(typed) && typed.cells[2]).toEqual([{ is: "number", value: 45_112 }]);
  const large = plainNumber({ cells: column([45_000, 45_112, 46_000]) });
  expect(!isProblem(large) && large.numbers).toBe(3);
});

it("cells without a number have no say in what looks like a date", () => {
  const found = plainNumber({ cells: column([300, "lost", 45_112, "forgot", null, 310]) });
  expect(!isProblem(found) && found.readings.map(({ kind }) => kind)).toContain("excel-date");
});

it("texts are told without the spaces round them", () => {
  const found = plainNumber({ cells: column([" 506* ", 300]) });
  expect(!isProblem(found) && found.readings).toMatchObject([{ kind: "mark-removed", text: "506*" }]);
});

it("one cell that can be read is a number; of several, each that cannot is refused by itself", () => {
  const one = plainNumber({ cells: column(["0.5 kg"]) });
  expect(!isProblem(one) && one.cells).toEqual([[{ is: "number", value: 500 }]]);
  const two = plainNumber({ cells: column(["forgot", 300]) });
  expect(!isProblem(two) && two.cells.flat().map(({ is }) => is)).toEqual(["refused", "number"]);
});

it("one cell that cannot be read refuses the call", () => {
  expect(plainNumber({ cells: column(["forgot"]) })).toMatchObject({ problem: "not-plain" });
  expect(plainNumber({ cells: column([1]), unit: column(["stone"]) })).toMatchObject({ problem: "unknown-choice" });
  for (const nothing of [{}, { cells: null }])
    expect(plainNumber(nothing)).toEqual({ problem: "missing-argument", argument: "cells" });
});
