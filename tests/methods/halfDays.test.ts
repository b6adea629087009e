import { expect, it } from "vitest";
import { halfDays } from "../../src/methods/halfDays";
import picksInR from "../reference/picks.json";
import { demoPicks } from "./demoPicks";
import { pickRows } from "./pickRows";

const { cases: reference } = picksInR;

it("half-harvest days of every plant of the clean demo log (R, tests/reference/picks.R)", () => {
  const { picks, plants } = demoPicks();
  const halves = halfDays(picks, plants.length);
  const found = plants.map((plant, owner) => [plant, (halves[owner] ?? 0) - reference.first]);
  expect(Object.fromEntries(found)).toEqual(reference.halves);
});

it("does not mind the order of rows, nor rounding noise at exactly half", () => {
  const log = pickRows([
    [0, 0.6, 9],
    [0, 0.1, 2],
    [0, 0.2, 3],
    [0, 0.3, 4],
    [1, 0, 5],
    [2, 7, Number.NaN],
    [-1, 7, 1],
  ]);
  // 0.1 + 0.2 + 0.3 is half of 1.2
  expect([...halfDays(log, 3)]).toEqual([4, Number.NaN, Number.NaN]);
  expect([...halfDays({ ...log, days: null }, 1)]).toEqual([Number.NaN]);
});
