import { expect, it } from "vitest";
import { readTrialNames } from "../../src/questions/readTrialNames";
import { found, range } from "./range";

const averages = range("usual_averages", ["Bare", 2, 4]);
const read = (cells: Parameters<typeof range>[1], heading = true) =>
  found(readTrialNames(range("names", cells), averages, heading));

it("without names, rows are trials that are called nothing", () => {
  for (const none of [null, undefined]) {
    const { rowIs, of } = found(readTrialNames(none, averages, true));
    expect([rowIs, of(0), of(1)]).toEqual(["trial", null, null]);
  }
});

it("an empty cell, or a column of them, is no names", () => {
  for (const none of [[null], [null, "", null], [null, null, null, null, null]]) {
    const { rowIs, of } = read(none);
    expect([rowIs, of(0), of(1)]).toEqual(["trial", null, null]);
  }
});

it("names may run on empty below the averages", () => {
  const { of } = read(["Garden", "front", "back", null, null]);
  expect([of(0), of(1)]).toEqual(["front", "back"]);
});

it("a row without its name is called nothing", () => {
  const { of } = read(["Garden", null, "back"]);
  expect([of(0), of(1)]).toEqual([null, "back"]);
});

it("names of another number of rows are refused", () => {
  expect(readTrialNames(range("names", ["Garden", "front"]), averages, true)).toMatchObject({
    problem: "shapes-differ",
    first: { argument: "names", rows: 2 },
    second: { argument: "usual_averages", rows: 3 },
  });
});

it.each([
  ["Season", "season"],
  ["harvest YEAR", "season"],
  ["Crops", "crop"],
  ["Varieties", "crop"],
  ["Kind of bean", "crop"],
  ["Garden", "trial"],
  [null, "trial"],
] as const)("rows headed %s are of the kind %s", (heading, kind) => {
  expect(read([heading, "one", "two"]).rowIs).toBe(kind);
});

it("without a heading, rows are trials and all cells are names", () => {
  const { rowIs, of } = read(["Season", "one", "two"], false);
  expect([rowIs, of(0), of(2)]).toEqual(["trial", "Season", "two"]);
});
