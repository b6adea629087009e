import { expect, it } from "vitest";
import { runningTotals, stepDays } from "../../src/methods/runningTotals";
import picksInR from "../reference/picks.json";
import { demoPicks } from "./demoPicks";
import { pickRows } from "./pickRows";

const { cases: reference } = picksInR;

it("running harvest of four mulches in steps of a week (R, tests/reference/picks.R)", () => {
  const { picks, mulchOf } = demoPicks();
  const owners = picks.owners.map((owner) => mulchOf[owner] ?? -1);
  const last = reference.steps.at(-1) ?? 0;
  const steps = stepDays(reference.first, last, 7);
  expect(steps).toEqual(reference.steps);
  const running = runningTotals({ ...picks, owners }, 4, steps);
  const perPlant = steps.map((_, step) => running.map((sums) => (sums[step] ?? 0) / 8));
  expect(perPlant).toEqual(reference.running);
});

it("steps end with the last day, whether it falls on a step or not", () => {
  expect(stepDays(10, 24, 7)).toEqual([10, 17, 24]);
  expect(stepDays(10, 25, 7)).toEqual([10, 17, 24, 25]);
  expect(stepDays(10, 10, 7)).toEqual([10]);
});

it("unknown days and amounts, and rows of nobody, add nothing", () => {
  const log = pickRows([
    [0, 5, Number.NaN],
    [0, Number.NaN, 10],
    [-1, 5, 10],
    [0, 2, 11],
  ]);
  expect(runningTotals(log, 1, [10, 12])).toEqual([[0, 2]]);
});

it("no known days, no sums", () => {
  expect(runningTotals({ ...pickRows([[0, 5, 10]]), days: null }, 1, [10, 12])).toEqual([[0, 0]]);
});
