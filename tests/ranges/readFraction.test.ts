import { describe, expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import type { FractionName } from "../../src/ranges/fractionRules";
import { missing } from "../../src/ranges/option";
import { readFraction } from "../../src/ranges/readFraction";
import { column } from "./column";

const read = (argument: FractionName, cell: Cell) => readFraction(column([cell]), argument, "omitted");

describe("readFraction accepts a percent as the spreadsheet holds it", () => {
  it.each([
    ["worthwhile", 0.1, 0.1],
    ["worthwhile", "30%", 0.3],
    ["worthwhile", "30 %", 0.3],
    ["worthwhile", "30,5 %", 0.305],
    ["worthwhile", "0.3", 0.3],
    ["worthwhile", -0.2, -0.2],
    ["change", 0, 0],
    ["change", 2.5, 2.5],
    ["change", 4.99, 4.99],
    ["change", -0.99, -0.99],
    ["change", "300%", 3],
    ["unevenness", 2.99, 2.99],
    ["chance", 0.8, 0.8],
    ["losses", 0, 0],
    ["confidence", 0.5, 0.5],
  ] as const)("%s %j is %d", (argument, cell, fraction) => {
    expect(read(argument, cell)).toBe(fraction);
  });
});

describe("readFraction catches a percent typed as points (METHODS 4.4)", () => {
  it.each([
    ["worthwhile", 1],
    ["worthwhile", -10],
    ["change", 3],
    ["change", 5],
    ["change", 30.5],
    ["change", -30],
    ["unevenness", 3],
    ["unevenness", 35],
    ["chance", 80],
    ["losses", 1],
    ["losses", 10],
    ["confidence", 95],
  ] as const)("%s %d", (argument, given) => {
    expect(read(argument, given)).toEqual({ problem: "percent-as-points", argument, given });
  });

  it("as bare text like the number", () => {
    expect(read("worthwhile", "30")).toEqual({ problem: "percent-as-points", argument: "worthwhile", given: 30 });
  });
});

describe("readFraction refuses what a percent cannot be", () => {
  it.each([
    ["chance", 0.05, 0.05, 1],
    ["chance", 1, 0.05, 1],
    ["chance", "100%", 0.05, 1],
    ["chance", -80, 0.05, 1],
    ["losses", -0.1, 0, 1],
    ["losses", "100 %", 0, 1],
    ["confidence", 0.49, 0.5, 1],
    ["confidence", 1, 0.5, 1],
    ["confidence", "950%", 0.5, 1],
    ["worthwhile", "100%", -1, 1],
    ["change", "500%", -1, 5],
    ["unevenness", "300%", 0, 3],
  ] as const)("%s %j", (argument, cell, low, high) => {
    expect(read(argument, cell)).toMatchObject({ problem: "percent-outside", argument, low, high });
  });

  it("a worthwhile change of nothing", () => {
    expect(read("worthwhile", 0)).toEqual({ problem: "zero-worthwhile" });
  });

  it.each([0, -0.3])("an unevenness of %d", (given) => {
    expect(read("unevenness", given)).toEqual({ problem: "zero-unevenness", given });
  });

  it.each([
    [-1, -1],
    ["-150%", -1.5],
  ])("a fall of %j", (cell, given) => {
    expect(read("change", cell)).toEqual({ problem: "fall-too-big", given });
  });

  it.each([["a lot"], [true], [{ error: "#N/A" }], ["1,250%"], [Number.NaN]])("%j, which is no number", (cell) => {
    expect(read("change", cell)).toMatchObject({ problem: "not-a-number", argument: "change" });
  });

  it("a block of cells", () => {
    expect(readFraction(column([0.1, 0.2]), "change", 0)).toMatchObject({ problem: "one-cell-wanted" });
  });
});

it("readFraction gives the fallback for an omitted argument, which may be a Problem", () => {
  expect(readFraction(null, "worthwhile", 0.1)).toBe(0.1);
  expect(read("worthwhile", " ")).toBe("omitted");
  expect(readFraction(undefined, "change", missing("change"))).toEqual(missing("change"));
});
