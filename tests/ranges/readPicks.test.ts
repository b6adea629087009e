import { expect, it } from "vitest";
import type { Cell } from "../../src/nouns/cell";
import type { PickRanges } from "../../src/ranges/pickRanges";
import { readPicks } from "../../src/ranges/readPicks";
import { found, range } from "../questions/range";

const none = { ownerKind: "plant", lossNotes: null, besides: [], unit: null, start: null } as const;

type Changes = Partial<PickRanges>;

function log(
  plants: readonly Cell[],
  amounts: readonly Cell[],
  dates: readonly Cell[] | null = null,
  changes: Changes = {},
) {
  return readPicks({
    ...none,
    owners: range("plants", plants),
    amounts: range("amounts", amounts),
    dates: dates && range("dates", dates),
    ...changes,
  });
}

it("a text above the amounts is a heading, unless a date stands beside it or the plant comes again", () => {
  const rows = (...given: Parameters<typeof log>) => found(log(...given)).owners.ids.length;
  expect(rows(["plant", "A1"], ["grams", 5])).toBe(1);
  expect(rows(["A1", "A1"], ["slugs", 5])).toBe(2);
  expect(rows(["A1", "A2"], ["slugs", 5], ["2023-07-05", "2023-07-06"])).toBe(2);
  expect(rows([null, "A2"], ["grams", 5])).toBe(1);
  expect(rows(["plant", "A1"], ["grams", 5], ["date", "2023-07-06"])).toBe(1);
  expect(rows(["A1", "A2", "A1"], ["slugs", 5, 6])).toBe(3);
  expect(rows(["A1", "A2"], [5, 6])).toBe(2);
});

it("the heading names the owners and the unit, and is no row of its own", () => {
  const { owners, ownersHeading, amounts } = found(log(["plant", "A1", "A2"], ["Weight (kg)", 0.5, "200 g"]));
  expect([ownersHeading, owners.names, amounts.unit]).toEqual(["plant", ["A1", "A2"], "kg"]);
  expect([...amounts.values]).toEqual([0.5, 0.2]);
});

it("a note in the first row is no heading: it names neither owners nor unit", () => {
  const { ownersHeading, amounts } = found(log(["A1", "A1"], ["grams", 5]));
  expect([ownersHeading, amounts.unit]).toEqual([null, null]);
  expect([...amounts.missing]).toEqual([[0, "text"]]);
});

it("a heading in another kind of unit than the one asked for is refused", () => {
  expect(log(["plant", "A1"], ["Length (cm)", 5], null, { unit: "g" })).toMatchObject({
    problem: "units-differ",
    firstUnit: "cm",
    secondUnit: "g",
  });
});

it.each([
  ["below a heading", ["plant", "A1", "A2", "A3"], ["grams", 0, -5, -6], { row: 3, cell: "B4" }],
  ["in the first row", ["A1", "A2"], [-5, 3], { row: 1, cell: "B2" }],
])("the first amount below zero is refused with its place: %s", (_name, plants, amounts, place) => {
  expect(log(plants, amounts)).toEqual({
    problem: "negative-amount",
    place: { argument: "amounts", column: null, ...place },
    given: -5,
  });
});

it("lost-words in a column beside count, without dates and below a heading as well", () => {
  const lossNotes = range("fruit", ["fruit", 3, "dead"]);
  const { lost, amounts } = found(log(["plant", "A1", "A2"], ["grams", 5, null], null, { lossNotes }));
  expect([...lost]).toEqual([[1, "lossNotes"]]);
  expect([...amounts.missing]).toEqual([]);
});

it("further labels of a row are read below the heading, and one not given stays null", () => {
  const mulch = range("treatments", ["mulch", "Straw", "Bare", "straw"]);
  const { besides } = found(log(["plant", "A1", "A2", "A3"], ["grams", 5, 6, 7], null, { besides: [mulch, null] }));
  expect(besides).toEqual([{ names: ["Straw", "Bare"], ids: Int32Array.of(0, 1, 0) }, null]);
});

it("blocks are read row by row, all alike", () => {
  const block = (argument: string, cells: readonly (readonly Cell[])[]) => ({ ...range(argument, []), cells });
  const plants = [
    ["A1", "A2"],
    ["A3", "A1"],
  ];
  const amounts = [
    [1, " 2* "],
    [3, 4],
  ];
  const read = found(
    readPicks({ ...none, owners: block("plants", plants), amounts: block("amounts", amounts), dates: null }),
  );
  expect([...read.owners.ids]).toEqual([0, 1, 2, 0]);
  expect([...read.amounts.values]).toEqual([1, 2, 3, 4]);
  expect(read.cellAt("amounts", 1)).toEqual({
    place: { argument: "amounts", row: 1, column: 2, cell: "C2" },
    text: "2*",
  });
  expect(read.cellAt("owners", 2).text).toBe("A3");
});

it("any of the ranges may run on below the last pick, as B2:B1000 does", () => {
  const plants = ["A1", "A2"];
  const long = (argument: string, cells: readonly Cell[]) => range(argument, [...cells, null, null, null]);
  const others = {
    lossNotes: long("fruit", [3, "dead"]),
    besides: [long("treatments", ["Straw", "Bare"])],
  };
  const read = found(log(plants, [5, null, null], ["2023-07-05", "2023-07-06"], others));
  expect([read.owners.ids.length, read.amounts.values.length, read.days?.serials.length]).toEqual([2, 2, 2]);
  expect([read.besides[0]?.ids.length, [...read.lost]]).toEqual([2, [[1, "lossNotes"]]]);
});

it("a log of empty cells has no rows", () => {
  const { owners, amounts, days } = found(log([null, null], [null, null], [null, null]));
  expect([owners.ids.length, amounts.values.length, days?.serials.length]).toEqual([0, 0, 0]);
});

it("a log in which nothing is amiss sets no row aside", () => {
  const read = found(log(["A1", "A2", "A3"], [1, 2, 3]));
  expect([...read.amounts.values]).toEqual([1, 2, 3]);
  expect([read.totalRows, read.unlabelled]).toEqual([[], []]);
});

it("tells a cell's place and text as the sheet has them, heading or not", () => {
  const { cellAt } = found(log(["plant", "A1", "A2"], ["grams", 5, "6*"]));
  expect(cellAt("amounts", 1)).toEqual({
    place: { argument: "amounts", row: 3, column: null, cell: "B4" },
    text: "6*",
  });
  expect(cellAt("dates", 0).place.argument).toBe("plants");
});

it("empty rows at the end and between are not there; rows of totals lose their owner", () => {
  const read = found(log(["A1", null, "TOTAL", null, "A1", null], [1, null, 1, 7, 2, null]));
  expect([...read.owners.ids]).toEqual([0, -1, -1, -1, 0]);
  expect(read.totalRows).toEqual([2]);
  expect(read.unlabelled).toEqual([3]);
  expect([...read.amounts.values]).toEqual([1, Number.NaN, Number.NaN, Number.NaN, 2]);
});

it("a treatment's name that a quarter of the rows has is no total", () => {
  const read = found(log(["Weekly feed", "Bare", "Weekly feed", "Bare", "Week total"], [1, 2, 3, 4, 10]));
  expect([...read.owners.ids]).toEqual([0, 1, 0, 1, -1]);
  expect(read.totalRows).toEqual([4]);
});

it("the quarter is of the rows with a label: two of eight, whatever stands below without one", () => {
  const labels = ["Weekly feed", "Bare", "Weekly feed", "Bare", "Hay", "Hay", "Wool", "Wool"];
  const amounts = [1, 2, 3, 4, 5, 6, 7, 8];
  expect(found(log([...labels, null, null], [...amounts, 9, 10])).totalRows).toEqual([]);
  expect(found(log([...labels, "Bare"], [...amounts, 9])).totalRows).toEqual([0, 2]);
  expect(found(log(["Bare", "Bare", ...labels], [9, 10, ...amounts])).totalRows).toEqual([2, 4]);
});

it("dates take order and year from their column; the first unclear ones are listed by row", () => {
  const { days } = found(log(["A1", "A1", "A1"], [1, 2, 3], ["5/7/2023", "24/6/2023", "soon"]));
  expect([...(days?.serials ?? [])]).toEqual([45112, 45101, Number.NaN]);
  expect(days?.unclear).toEqual([2]);
});

it("unit-less columns, errors and logical values", () => {
  const { amounts } = found(log(["A1", "A1", "A1"], [1, true, { error: "#N/A" }]));
  expect(amounts.unit).toBeNull();
  expect([...amounts.missing.values()]).toEqual(["true-or-false", "error"]);
});

it("kilograms typed among bare numbers keep no rounding noise: 1.005 kg are 1005 g", () => {
  expect(1.005 * 1000).not.toBe(1005);
  expect(found(log(["A1", "A1"], ["1.005 kg", 900])).amounts.values[0]).toBe(1005);
});

it("where several units fit the bare numbers as well, those with a unit are left out", () => {
  const { amounts } = found(log(["A1", "A1", "A1"], ["1 kg", "2 lb", 2]));
  expect([...amounts.missing.values()]).toEqual(["unit-unclear", "unit-unclear"]);
});

it("sizes that differ are refused", () => {
  expect(log(["A1"], [1, 2])).toMatchObject({ problem: "shapes-differ", first: { rows: 2 }, second: { rows: 1 } });
  expect(log(["A1", "A2"], [1, 2], ["2023-07-05"])).toMatchObject({
    problem: "shapes-differ",
    second: { argument: "dates" },
  });
});
