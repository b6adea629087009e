import { expect, it, vi } from "vitest";
import { remembered } from "../../src/numerics/remembered";

it("works out each question once", () => {
  const compute = vi.fn((a: number, list: readonly number[]) => a + list.length);
  const known = remembered(compute);
  expect([known(1, [2, 3]), known(1, [2, 3]), known(1, [2, 4])]).toEqual([3, 3, 3]);
  expect(compute).toHaveBeenCalledTimes(2);
});

it("tells lists and numbers in other places apart", () => {
  const known = remembered((a: number, list: readonly number[], b: number) => 100 * a + 10 * list.length + b);
  expect(known(1, [2], 3)).toBe(113);
  expect(known(1, [2, 3], 3)).toBe(123);
  expect(known(12, [3], 3)).toBe(1213);
  expect(known(12, [], 3)).toBe(1203);
});

it("remembers NaN too", () => {
  const compute = vi.fn((_: number) => Number.NaN);
  const known = remembered(compute);
  expect(known(1)).toBeNaN();
  expect(known(1)).toBeNaN();
  expect(compute).toHaveBeenCalledTimes(1);
});

it("forgets after 500 answers rather than growing for ever", () => {
  const compute = vi.fn((a: number) => a);
  const known = remembered(compute);
  for (let a = 0; a < 500; a += 1) known(a);
  known(0);
  expect(compute).toHaveBeenCalledTimes(500);
  known(500);
  known(0);
  expect(compute).toHaveBeenCalledTimes(502);
});
