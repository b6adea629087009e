import { expect, it, vi } from "vitest";
import { tailTest } from "../../src/methods/tailTest";
import { twoSidedCritical, twoSidedTail } from "../../src/numerics/studentT";

it("says what the tail says, also next to the critical value", () => {
  const isBeyond = tailTest({ tail: twoSidedTail, critical: twoSidedCritical }, 0.05);
  for (const df of [1, 1.01, 4.99, 5, 12.34, 80.0001]) {
    const critical = twoSidedCritical(0.05, df);
    for (const share of [0.5, 0.99, 1 - 1e-12, 1 + 1e-12, 1.01, 2]) {
      const t = share * critical;
      expect(isBeyond(t, df), `t ${t}, df ${df}`).toBe(twoSidedTail(t, df) < 0.05);
    }
  }
});

it("a tail of just alpha is not below it", () => {
  const isBeyond = tailTest({ tail: () => 0.05, critical: () => 2 }, 0.05);
  expect(isBeyond(2, 5)).toBe(false);
});

it("works the tail out only where the kept critical values leave it open", () => {
  const tail = vi.fn(twoSidedTail);
  const isBeyond = tailTest({ tail, critical: twoSidedCritical }, 0.05);
  expect([isBeyond(1.5, 9.3), isBeyond(3, 9.3)]).toEqual([false, true]);
  expect(tail).not.toHaveBeenCalled();
  isBeyond(twoSidedCritical(0.05, 9.3), 9.3);
  expect(tail).toHaveBeenCalledTimes(1);
});
