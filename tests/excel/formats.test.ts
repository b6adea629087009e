import { describe, expect, it } from "vitest";
import { ref } from "./host/functionCall";
import { declaredSets } from "./host/officeInNode";
import { openExcel, sideBySide } from "./openExcel";

const trial = { Trial: sideBySide(["Bare", 4, 5, 6, 7], ["Straw", 6, 7, 8, 9], ["", 0.5]) };
const compared = ["COMPARETWO", ref("Trial!A1:A5"), ref("Trial!B1:B5")] as const;

/** Needed for a result that brings its format along, as the documentation of data types has it. */
const formatting = { ...declaredSets, CustomFunctionsRuntime: "1.4", ExcelApi: "1.19" };

describe("where Excel can show a result in its format", () => {
  it("a percent brings it along", async () => {
    const { calculate } = await openExcel(trial, { sets: formatting });
    const [change] = await calculate(["UPDOWN", 24, 72]);
    expect(change).toEqual({ cells: [[{ type: "Double", basicValue: 2, numberFormat: "0.0%" }]] });
  });

  it("amounts, counts, p values and texts of a table stay plain", async () => {
    const { calculate } = await openExcel(trial, { sets: formatting });
    const [table] = await calculate([...compared, "table"]);
    const cells = new Map((table as { cells: [string, unknown][] }).cells);
    expect(cells.get("Average, usual")).toBe(5.5);
    expect(cells.get("Plants, new")).toBe(4);
    expect(cells.get("p value")).toEqual(expect.any(Number));
    expect(cells.get("Verdict")).toEqual(expect.any(String));
    expect(cells.get("Change")).toMatchObject({ numberFormat: "0.0%", basicValue: expect.closeTo(2 / 5.5, 14) });
  });

  it("such a result is a number again as an argument", async () => {
    const { calculate } = await openExcel(trial, { sets: formatting });
    const percent = { type: "Double", basicValue: 0.4, numberFormat: "0.0%" };
    const both = await calculate(["PLANTSNEEDED", 0.3, [[percent]]], ["PLANTSNEEDED", 0.3, 0.4]);
    expect(both[0]).toEqual(both[1]);
  });
});

describe("where it cannot", () => {
  it.each([
    ["as the manifest asks at least", declaredSets],
    ["with the newer runtime alone", { ...declaredSets, CustomFunctionsRuntime: "1.4" }],
    ["with the newer workbook interface alone", { ...declaredSets, ExcelApi: "1.19" }],
  ])("a percent is a plain number: %s", async (_, sets) => {
    const { calculate } = await openExcel(trial, { sets });
    expect(await calculate(["UPDOWN", 24, 72])).toEqual([{ cells: [[2]] }]);
  });
});

// Excel hands an argument with words to choose from over as a text (its type in functions.json).
it("an empty cell where a word could be chosen is a word left out", async () => {
  const { calculate } = await openExcel(trial);
  const [alone, empty] = await calculate(compared, [...compared, ref("Trial!C1"), ref("Trial!C1")]);
  expect(empty).toEqual(alone);
});
