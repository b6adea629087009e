import { expect, it, vi } from "vitest";
import { shownToDiffer } from "../../src/methods/shownToDiffer";
import { dunnett } from "../../src/numerics/dunnett";
import { studentizedRange } from "../../src/numerics/studentizedRange";
import { twoSidedTail } from "../../src/numerics/studentT";

const range = studentizedRange(5);
const families = [
  { name: "Dunnett", comparisons: 4, joint: dunnett([0.6, 0.7, 0.7, 0.8]).tail },
  { name: "Tukey", comparisons: 10, joint: (t: number, df: number) => range.tail(Math.SQRT2 * t, df) },
];

it.each(families)("$name: what the bounds decide is what the p-value says", ({ comparisons, joint }) => {
  for (const df of [2, 3.7, 12, 60]) {
    for (let t = 0.1; t < 12; t *= 1.05) {
      const p = joint(t, df);
      const shown = shownToDiffer({ t: -t, df, comparisons, pValue: () => p }, 0.05);
      expect(shown, `t ${t}, df ${df}, p ${p}`).toBe(p < 0.05);
    }
  }
});

it("next to the level, a single comparison is Student's test, and a p-value of just the level is not below it", () => {
  const alone = twoSidedTail(2.4, 20);
  const single = { t: 2.4, df: 20, comparisons: 1, pValue: () => alone };
  const levels = [alone * (1 - 5e-10), alone, alone * (1 + 5e-10)];
  expect(levels.map((level) => shownToDiffer(single, level))).toEqual([false, false, true]);
  expect(shownToDiffer({ t: 2.4, df: 20, comparisons: 3, pValue: () => 0.05 }, 0.05)).toBe(false);
});

it("asks for the p-value only between the bounds", () => {
  const pValue = vi.fn(() => 0.04);
  const at = (t: number) => shownToDiffer({ t, df: 20, comparisons: 3, pValue }, 0.05);
  expect([at(2), at(3)]).toEqual([false, true]);
  expect(pValue).not.toHaveBeenCalled();
  expect(at(2.4)).toBe(true);
  expect(pValue).toHaveBeenCalledTimes(1);
});
