import { describe, expect, it } from "vitest";
import { mulch } from "../functions/demo";
import { type CellCall, ref } from "./host/functionCall";
import { functionsFile, openExcel, sideBySide } from "./openExcel";

const trial = { Trial: sideBySide(mulch("Bare soil"), mulch("Straw"), ["Amounts", 4, { error: "#N/A" }, 6, 0, 5]) };
const [bare, straw, faulty] = [ref("Trial!A1:A9"), ref("Trial!B1:B9"), ref("Trial!C1:C6")];
const three = [[4], [5], [6], [7], [8], [9]];
const mulches = [["Bare"], ["Bare"], ["Straw"], ["Straw"], ["Paper"], ["Paper"]];
const days = [1, 2, 3, 4, 5, 6].map((day) => [45_107 + day]);

/** One call of every function that has an answer. */
const answered: Readonly<Record<string, CellCall>> = {
  UPDOWN: ["UPDOWN", 24, 72],
  PERPLANT: ["PERPLANT", straw, "table"],
  UNEVENNESS: ["UNEVENNESS", straw, "table"],
  COMPARETWO: ["COMPARETWO", bare, straw, "table"],
  COMPAREMANY: ["COMPAREMANY", three, mulches, "table", null, "Bare"],
  WORTHIT: ["WORTHIT", bare, straw, 2.5, 1.1, "table"],
  MANYTRIALS: ["MANYTRIALS", three, [[5], [5], [7], [7], [9], [9]], "table"],
  TOTALSONLY: ["TOTALSONLY", 412, 30, 655, 30, "table"],
  PLANTSNEEDED: ["PLANTSNEEDED", 0.3, 0.4, "table"],
  SMALLESTCHANGE: ["SMALLESTCHANGE", 8, 0.4],
  CHANCETOSEE: ["CHANCETOSEE", 0.3, 8, 0.4, "table"],
  DRAWLOTS: ["DRAWLOTS", [["Bare"], ["Straw"]], 4, 1431],
  TALLYPICKS: ["TALLYPICKS", mulches, null, three],
  PICKCURVE: ["PICKCURVE", mulches, days, three],
  HALFPICKED: ["HALFPICKED", mulches, days, three],
  LOOKOVER: ["LOOKOVER", straw, "table"],
  PLAINNUMBER: ["PLAINNUMBER", [["0.235kg"], ["lost"], [null]]],
};

describe("the functions as Excel finds them", () => {
  it("every id of functions.json is the name of an associated function that answers", async () => {
    const { calculate } = await openExcel(trial);
    const ids = functionsFile.functions.map(({ id }) => id);
    expect(Object.keys(answered).sort()).toEqual(ids);
    const outcomes = await calculate(...ids.map((id): CellCall => answered[id] ?? [id]));
    expect(outcomes.filter((outcome) => "error" in outcome)).toEqual([]);
  });

  it("no function is associated that functions.json does not name", async () => {
    const { run } = await openExcel(trial);
    const names = run("JSON.stringify(Object.keys(CustomFunctions._association.mappings))");
    expect(JSON.parse(String(names)).sort()).toEqual(functionsFile.functions.map(({ id }) => id));
  });
});

describe("what leaves for Excel", () => {
  it("one value is a matrix of one cell", async () => {
    const { calculate } = await openExcel(trial);
    expect(await calculate(["UPDOWN", 24, 72])).toEqual([{ cells: [[2]] }]);
  });

  it("a table is a matrix of equal rows that holds texts and finite numbers only", async () => {
    const { calculate } = await openExcel(trial);
    const few: CellCall = ["COMPARETWO", [[4]], [[6]], "table"];
    const equal: CellCall = ["COMPARETWO", [[0], [0], [0]], [[0], [0], [0]], "table"];
    const outcomes = await calculate(...Object.values(answered), few, equal, ["UNEVENNESS", [[0], [0]], "table"]);
    for (const outcome of outcomes) {
      const { cells } = outcome as { cells: unknown[][] };
      expect(new Set(cells.map(({ length }) => length)).size).toBe(1);
      for (const cell of cells.flat()) expect(["string", "number"]).toContain(typeof cell);
    }
  });

  it("an error value may stand in one cell of a block, with its sentence", async () => {
    const { calculate } = await openExcel(trial);
    expect(await calculate(["PLAINNUMBER", [["forgot"], ["506*"]]])).toMatchObject([
      { cells: [[{ type: "Error", basicValue: "#VALUE!", message: "Can't read “forgot”." }], [506]] },
    ]);
  });

  it("a refusal has the error value that can carry a sentence, and its sentence", async () => {
    const { calculate } = await openExcel(trial);
    const outcomes = await calculate(
      ["UPDOWN", bare, straw, "percent"],
      ["COMPARETWO", bare, null],
      ["UPDOWN", 0, 5],
      ["PERPLANT", [["lost"], ["lost"]]],
      ["CHANCETOSEE", 30, 8, 0.4],
    );
    const lead = (error: string, sentence: string) => ({ error, sentence: expect.stringContaining(sentence) });
    expect(outcomes).toEqual([
      lead("#VALUE!", "“percent” cannot be shown here."),
      lead("#VALUE!", "new"),
      lead("#N/A", "Usual is 0"),
      lead("#N/A", "lost"),
      lead("#VALUE!", "Type"),
    ]);
  });
});

describe("an error value in a range", () => {
  it("is not recorded, and the rest is answered", async () => {
    const { calculate } = await openExcel(trial);
    const [table] = await calculate(["PERPLANT", faulty, "table"]);
    expect(table).toEqual({
      cells: expect.arrayContaining([
        ["Not recorded", 1],
        ["Plants counted", 4],
      ]),
    });
  });

  it("would be answered by Excel itself if functions.json did not let it through", async () => {
    const closed = { ...functionsFile, allowErrorForDataTypeAny: false };
    const { calculate } = await openExcel(trial, { file: closed });
    expect(await calculate(["PERPLANT", faulty])).toEqual([{ error: "#N/A", sentence: "" }]);
  });
});

describe("addresses of the arguments", () => {
  it("name the place of a plant when Excel tells them, and are not missed when it does not", async () => {
    const sheet = { Trial: sideBySide(["Bare", 4, "?", 5], ["Straw", 6, 7, 8]) };
    const call: CellCall = ["COMPARETWO", ref("Trial!A1:A4"), ref("Trial!B1:B4"), "One plant decides"];
    const told = await openExcel(sheet);
    expect(await told.calculate(call)).toEqual([{ cells: [["B3"]] }]);
    const untold = await openExcel(sheet, { addresses: false });
    expect(await untold.calculate(call)).toEqual([{ cells: [[expect.not.stringContaining("B3")]] }]);
  });
});

it("the pane's script finds the desk that the functions answer from, once", async () => {
  const { run } = await openExcel(trial);
  const answer = run(
    `globalThis[Symbol.for("fairbed.desk")].ask("UPDOWN", [24, 72].map((value, at) => ({
      argument: ["usual", "new"][at], cells: [[value]], corner: null, zerosVerified: true })).concat([null, null])).cell()[0][0]`,
  );
  expect(answer).toBe(2);
});
