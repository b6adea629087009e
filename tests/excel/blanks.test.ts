import { expect, it, vi } from "vitest";
import { mulch } from "../functions/demo";
import type { FakeExcel } from "./host/fakeExcel";
import { type CellCall, type Handing, ref } from "./host/functionCall";
import { functionsFile, openExcel, sideBySide } from "./openExcel";

/** Marlpit Corner with cells that nobody filled in, and a plant that bore nothing: 6 of the straw's 8 plants count. */
const bare = mulch("Bare soil").map((grams, at) => (at === 2 || at === 5 ? null : grams));
const straw = mulch("Straw").map((grams, at) => (at === 3 ? null : at === 6 ? 0 : grams));
const labels = ["Mulch", ...Array.from({ length: 8 }, (_, at) => (at === 4 ? null : at < 4 ? "Bare" : "Straw"))];
const trial = { Trial: sideBySide(bare, straw, labels, [null]) };

const column = (letter: string) => ref(`Trial!${letter}1:${letter}9`);
const empty = ref("Trial!D1");
const days = ["Date", ...Array.from({ length: 8 }, (_, at) => 45_108 + at)].map((day) => [day]);

/** Every function once, over empty cells and with empty cells as options. */
const calls: readonly CellCall[] = [
  ["UPDOWN", column("A"), column("B"), "table", empty],
  ["PERPLANT", column("B"), "table", empty, empty],
  ["UNEVENNESS", column("B"), "table", column("C")],
  ["COMPARETWO", column("A"), column("B"), "table", empty, empty, empty, empty],
  ["COMPARETWO", column("A"), column("B"), "table", "pairs"],
  ["COMPAREMANY", column("B"), column("C"), "table", null, "Bare", empty, empty, empty],
  ["PLANTSNEEDED", 0.3, empty, "table", empty, empty, empty, empty, empty],
  ["SMALLESTCHANGE", 8, empty, empty, empty, empty, empty, empty],
  ["CHANCETOSEE", 0.3, 8, empty, empty, empty, empty, empty],
  ["MANYTRIALS", column("A"), column("B"), "table", empty],
  ["DRAWLOTS", 3, 4, empty, empty, empty],
  ["TALLYPICKS", column("C"), empty, column("B"), empty, null, null, empty, empty],
  ["PICKCURVE", column("C"), days, column("B"), empty, empty, empty],
  ["HALFPICKED", column("C"), days, column("B"), empty, empty],
  ["TOTALSONLY", 412, 30, 655, 30, "table", empty, empty],
  ["WORTHIT", column("A"), column("B"), 2.5, 0.4, "table", empty, empty],
  ["LOOKOVER", ref("Trial!A1:C9"), "table", empty, empty, empty],
  ["PLAINNUMBER", ref("Trial!B2:B9"), empty],
];

/** How often the page asked Excel which cells are empty. */
function readings({ requests }: FakeExcel): number {
  return requests.filter(({ Actions }) => Actions.some(({ QueryInfo }) => QueryInfo?.Select?.includes("valueTypes")))
    .length;
}

const cautions: CellCall = ["PERPLANT", column("B"), "cautions"];
const counted: CellCall = ["PERPLANT", column("B"), "Plants counted"];
const hosts: readonly Partial<Handing>[] = [{ blank: 0 }, { blank: null }, { blank: "" }];

it("the calls below leave no function out", () => {
  expect([...new Set(calls.map(([id]) => id))].sort()).toEqual(functionsFile.functions.map(({ id }) => id));
});

it.each(hosts)("every function answers the same where an empty cell arrives as $blank", async (handing) => {
  const told = await openExcel(trial, { blank: null });
  const byNull = await told.calculate(...calls);
  const { calculate } = await openExcel(trial, handing);
  expect(await calculate(...calls)).toEqual(byNull);
  expect(JSON.stringify(byNull)).not.toMatch(/zeros? found/);
  expect(byNull.filter((outcome) => "error" in outcome)).toEqual([]);
});

it("a zero that stands in the sheet stays a plant that bore nothing", async () => {
  const { calculate } = await openExcel(trial, { blank: 0 });
  expect(await calculate(counted)).toEqual([{ cells: [[6]] }]);
});

it("all calls of one recalculation share one reading", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: 0 });
  await calculate(...calls);
  expect(readings(excel)).toBe(1);
});

it("a zero typed between two calculations counts, even before Excel tells of the change", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: 0 });
  const before = calculate(counted);
  await vi.waitUntil(() => readings(excel) === 1);
  excel.type("Trial!B4", [[0]]);
  expect(await Promise.all([before, calculate(counted)])).toEqual([[{ cells: [[6]] }], [{ cells: [[7]] }]]);
  excel.type("Trial!B4", [[null]]);
  expect(await calculate(counted)).toEqual([{ cells: [[6]] }]);
});

it("the sheet is not asked where no argument holds a zero, nor for typed values", async () => {
  const { excel, calculate } = await openExcel({ Trial: sideBySide([4, 5, 6], [7, 8, 0]) }, { blank: 0 });
  await calculate(["PERPLANT", ref("Trial!A1:A3")], ["UPDOWN", 4, 0]);
  expect(readings(excel)).toBe(0);
});

it("a host that sends null once is never asked again: its zeros are zeros", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: null });
  expect(await calculate(cautions)).toEqual([{ cells: [[expect.not.stringMatching(/zeros? found/)]] }]);
  expect(readings(excel)).toBe(0);
});

it("an empty text is no proof by itself; for a cell that the sheet calls empty it is", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: "" });
  await calculate(counted);
  expect(readings(excel)).toBe(1);
  excel.type("Trial!B4", [[0]]);
  expect(await calculate(counted)).toEqual([{ cells: [[7]] }]);
  expect(readings(excel)).toBe(1);
});

it("an empty text that a spilled table of ours left behind proves nothing", async () => {
  const spilled = sideBySide(["Mulch", "Bare", "All"], [5, "", ""], [4, 0, null]);
  const { excel, calculate } = await openExcel({ Trial: spilled }, { blank: 0 });
  const amounts: CellCall = ["PERPLANT", ref("Trial!C1:C3"), "Plants counted"];
  await calculate(["PERPLANT", ref("Trial!B1:C3")]);
  expect(readings(excel)).toBe(1);
  expect(await calculate(amounts)).toEqual([{ cells: [[2]] }]);
  expect(readings(excel)).toBe(2);
});

it("other sheets, quoted names and whole columns are read as far as they are used", async () => {
  const { excel, calculate } = await openExcel({ Home: [["x"]], "Anna's bed!": sideBySide([4, null, 0, 5], [1]) });
  const [counts, whole] = await calculate(
    ["PERPLANT", ref("'Anna''s bed!'!A1:A4"), "Plants counted"],
    ["PERPLANT", ref("'Anna''s bed!'!A:A"), "Plants counted"],
  );
  expect([counts, whole]).toEqual([{ cells: [[3]] }, { cells: [[3]] }]);
  expect(readings(excel)).toBe(1);
});

it("one address that Excel does not know leaves the others verified", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: 0 });
  const gone: CellCall = ["PERPLANT", ref("Trial!A1:B9"), "cautions"];
  const both = calculate(counted, gone);
  excel.book.unreadable.add("A1:B9");
  expect(await both).toEqual([{ cells: [[6]] }, { cells: [[expect.stringContaining("4 zeros found")]] }]);
});

it("a lost address among many is found in halves, not by a reading an address", async () => {
  const rows = Array.from({ length: 64 }, () => [0, null]);
  const { excel, calculate } = await openExcel({ Trial: rows }, { blank: 0 });
  const calls = rows.map((_, row): CellCall => ["PERPLANT", ref(`Trial!A${row + 1}:B${row + 1}`), "Plants counted"]);
  excel.book.unreadable.add("A40:B40");
  const outcomes = await calculate(...calls);
  expect(outcomes).toEqual(rows.map((_, row) => ({ cells: [[row === 39 ? 2 : 1]] })));
  expect(readings(excel)).toBe(13);
});

it("without addresses the zeros are kept and doubted, at once", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: 0, addresses: false });
  expect(await calculate(counted, cautions)).toEqual([
    { cells: [[7]] },
    { cells: [[expect.stringContaining("2 zeros found. If those cells are empty")]] },
  ]);
  expect(readings(excel)).toBe(0);
});

it("an Excel that does not answer is waited for three seconds; then the zeros are kept and doubted", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: 0 });
  excel.silent = true;
  const begun = performance.now();
  const outcomes = await calculate(cautions, counted);
  expect(outcomes).toEqual([{ cells: [[expect.stringContaining("2 zeros found")]] }, { cells: [[7]] }]);
  expect(performance.now() - begun).toBeLessThan(4000);
});

it("a cell being typed in is no reason to wait", async () => {
  const { excel, calculate } = await openExcel(trial, { blank: 0 });
  excel.book.editing = true;
  const outcomes = await calculate(counted, ["PERPLANT", column("A"), "Plants counted"]);
  expect(outcomes).toEqual([{ cells: [[7]] }, { cells: [[8]] }]);
  expect(readings(excel)).toBe(1);
});

it("a refusal after a reading leaves with its code and sentence", async () => {
  const { calculate } = await openExcel(trial, { blank: 0 });
  expect(await calculate(["PERPLANT", column("B"), "percent"])).toEqual([
    { error: "#VALUE!", sentence: expect.stringContaining("“percent” cannot be shown here.") },
  ]);
});
