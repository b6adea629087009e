import { expect, it } from "vitest";
import { sumPicks, widen } from "../../src/methods/sumPicks";
import { pickRows } from "./pickRows";

const unknown = Number.NaN;
const log = pickRows([
  [0, 5, 10],
  [1, 0, 11],
  [-1, 99, 12],
  [0, 7, unknown],
  [0, unknown, 20],
  [0, 2, 8],
]);

it("adds up by owner; rows of nobody and unknown amounts add nothing", () => {
  const { totals, rows, weighed, picks } = sumPicks(log, 3);
  expect([...totals]).toEqual([14, 0, 0]);
  expect([...rows]).toEqual([4, 1, 0]);
  expect([...weighed]).toEqual([3, 1, 0]);
  expect([...picks]).toEqual([3, 0, 0]);
});

it("first and last day are those of amounts above 0, whatever the order", () => {
  const { first, last } = sumPicks(log, 3);
  expect([...first]).toEqual([8, unknown, unknown]);
  expect([...last]).toEqual([10, unknown, unknown]);
  expect([...sumPicks({ ...log, days: null }, 1).first]).toEqual([unknown]);
});

it("widen takes one more day into account, and no unknown one", () => {
  const days = { first: Float64Array.of(8, unknown), last: Float64Array.of(10, unknown) };
  widen(days, 0, 12);
  widen(days, 0, unknown);
  widen(days, 1, 3);
  expect([...days.first, ...days.last]).toEqual([8, 3, 12, 3]);
});
