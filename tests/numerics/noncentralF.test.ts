import { expect, it } from "vitest";
import * as central from "../../src/numerics/fisherF";
import { upperTail } from "../../src/numerics/noncentralF";
import { near } from "../near";
import { agreesOnGrid } from "./grid";

// R's pf() with ncp has an absolute accuracy of about 1e-9, at worst 2e-9 on this grid
agreesOnGrid("noncentral_f_upper", (x, d1, d2, ncp) => upperTail(x ?? 0, [d1 ?? 0, d2 ?? 0], ncp ?? 0), {
  truth: 1e-12,
  r: 1e-10,
  rAbsolute: 5e-9,
});

it("without non-centrality it is the central F", () => {
  for (const f of [0.1, 1, 8]) near(`${f}`, upperTail(f, [3, 12], 0), central.upperTail(f, 3, 12), { relative: 1e-14 });
});

it("very large non-centrality neither hangs nor overflows", () => {
  near("certain", upperTail(4, [1, 30], 1e6), 1, { relative: 1e-13 });
  expect(upperTail(1e5, [1, 1e4], 2e3)).toBeLessThan(1e-200);
});

it("hard cases: f = 0 and infinite f", () => {
  near("all", upperTail(0, [3, 12], 5), 1, { relative: 1e-14 });
  expect(upperTail(Number.POSITIVE_INFINITY, [3, 12], 5)).toBe(0);
});

it.each([
  [-1, 3, 12, 5],
  [1, 0, 12, 5],
  [1, -3, 12, 5],
  [1, 3, 0, 5],
  [1, 3, -12, 5],
  [Number.POSITIVE_INFINITY, 0, 12, 5],
  [Number.POSITIVE_INFINITY, 3, 0, 5],
  [Number.POSITIVE_INFINITY, 3, 12, -5],
  [1, Number.POSITIVE_INFINITY, 12, 5],
  [1, 3, 12, Number.POSITIVE_INFINITY],
  [1, 3, Number.POSITIVE_INFINITY, 5],
  [1, 3, 12, -5],
])("no answer for f = %d, df %d and %d, ncp %d", (f, d1, d2, ncp) => {
  expect(upperTail(f, [d1, d2], ncp)).toBeNaN();
});
