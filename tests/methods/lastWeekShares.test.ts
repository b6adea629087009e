import { expect, it } from "vitest";
import { lastWeekShares } from "../../src/methods/lastWeekShares";
import { near } from "../near";
import picksInR from "../reference/picks.json";
import { demoPicks } from "./demoPicks";
import { pickRows } from "./pickRows";

const { cases: reference } = picksInR;

it("shares of four mulches in the clean demo log (R, tests/reference/picks.R)", () => {
  const { picks, mulchOf } = demoPicks();
  const shares = lastWeekShares(picks, mulchOf, 4);
  expect(shares).toHaveLength(4);
  for (const [at, share] of shares.entries()) {
    near(reference.mulches[at] ?? "", share, reference.lastWeek[at] ?? 0, { relative: 1e-15 });
  }
});

it("seven days, the last one among them; unknown days and rows of no group do not count", () => {
  const log = pickRows([
    [0, 10, 100],
    [0, 30, 93],
    [0, 10, Number.NaN],
    [1, 5, 94],
    [2, 5, 107],
    [-1, 5, 120],
    [1, 0, 130],
  ]);
  expect(lastWeekShares(log, Int32Array.of(0, 1, -1), 2)).toEqual([0, 0]);
  expect(lastWeekShares(log, Int32Array.of(0, 0, 1), 3)).toEqual([0, 1, Number.NaN]);
});

it("unknown and empty amounts, unknown days and rows of nobody leave the share as it is: 30 of 40", () => {
  const sound = [
    [0, 30, 107],
    [0, 10, 100],
  ] as const;
  const others = [
    [0, Number.NaN, 106],
    [0, 0, 106],
    [0, 40, Number.NaN],
    [-1, 40, 107],
  ] as const;
  expect(lastWeekShares(pickRows([...sound, ...others]), Int32Array.of(0), 2)).toEqual([0.75, Number.NaN]);
});

it("the first owner's last pick may end the log; a later row of an earlier day does not", () => {
  const log = pickRows([
    [0, 5, 107],
    [1, 5, 100],
    [1, 5, 101],
  ]);
  expect(lastWeekShares(log, Int32Array.of(0, 1), 2)).toEqual([1, 0.5]);
});

it("no known days, no shares", () => {
  const log = { ...pickRows([[0, 5, 107]]), days: null };
  expect(lastWeekShares(log, Int32Array.of(0), 1)).toEqual([Number.NaN]);
});
