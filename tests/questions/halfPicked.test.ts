import { expect, it } from "vitest";
import { halfPicked } from "../../src/questions/halfPicked";
import { codes, found, given } from "./range";

const call = given({ plants: ["A", "B", "A"], dates: ["1/7/2023", "24/7/2023", "8/7/2023"], amounts: [1, "6 g", 4] });

it("the start is written like the dates of the log, and may lie before them", () => {
  const { start, startGiven } = found(halfPicked({ ...call, ...given({ start: "5/6/2023" }) }));
  expect([start, startGiven]).toEqual([45082, true]);
  expect(found(halfPicked(call))).toMatchObject({ start: 45108, startGiven: false, mean: 15 });
});

it("each plant's place is that of its first row", () => {
  expect(found(halfPicked(call)).plants.map(({ plant, place }) => [plant, place.cell])).toEqual([
    ["A", "B2"],
    ["B", "B3"],
  ]);
});

it("a lost plant, one that bore nothing and one never weighed have no day, and leave the average alone", () => {
  const plants = ["A", "A", "B", "B", "C", "D", "Total"];
  const dates = ["2023-07-01", "2023-07-08", "2023-07-01", "2023-07-08", "2023-07-01", "2023-07-01", "2023-07-08"];
  const { plants: days, mean } = found(halfPicked(given({ plants, dates, amounts: [1, 4, 3, "lost", 0, "?", 8] })));
  expect(days.map(({ plant, day }) => [plant, day])).toEqual([
    ["A", 7],
    ["B", "lost"],
    ["C", "no harvest"],
    ["D", "not recorded"],
  ]);
  expect(mean).toBe(7);
});

it("refuses several days for the start, and words", () => {
  const start = (cells: string | readonly string[]) => halfPicked({ ...call, ...given({ start: cells }) });
  expect(start(["1/7/2023", "8/7/2023"])).toEqual({
    problem: "one-cell-wanted",
    argument: "start",
    rows: 2,
    columns: 1,
  });
  expect(start("soon")).toEqual({ problem: "not-a-date", argument: "start", given: "soon" });
});

it("tells what was read as numbers", () => {
  expect(codes(found(halfPicked(call)).cautions())).toEqual(["C14", "C12"]);
});

it("reads a log of so many plants that work on every pair of them would never end", () => {
  const rows = Array.from({ length: 40_000 }, (_, at) => at);
  const log = { plants: rows.map((at) => `P${at}`), dates: rows.map(() => 45_108), amounts: rows.map(() => 2) };
  expect(found(halfPicked(given(log))).plants.length).toBe(40_000);
});
