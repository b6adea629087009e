import { describe, expect, it } from "vitest";
import { MOST_FLIPS, MOST_SPLITS, type Seen, swapCount } from "../../src/methods/swapCount";
import { choose } from "../../src/numerics/choose";

/** Counts these sums against the one seen. */
function counted(seen: Seen, sums: readonly number[]) {
  const count = swapCount(seen);
  for (const sum of sums) count.look(sum);
  return count;
}

describe("what counts as a hit", () => {
  it("a sum less far out by no more than 1e-9 of the largest is a tie and counts, by more it does not", () => {
    expect(counted({ sum: 5, largest: 1000 }, [5 - 0.9e-6, 5 - 1.1e-6]).all().hits).toBe(1);
    expect(counted({ sum: 5, largest: 10 }, [5 - 0.9e-6]).all().hits).toBe(0);
  });

  it.each([5, -5])("as far from 0 as %d, either way", (sum) => {
    expect(counted({ sum, largest: 8 }, [-8, -5, -4, 0, 4, 5, 8]).all().hits).toBe(4);
  });

  it("every sum, where the one seen is 0 or nothing varies", () => {
    expect(counted({ sum: 0, largest: 0 }, [0, 0]).all()).toEqual({ p: 1, hits: 2, tried: 2, exact: true });
    expect(counted({ sum: 0, largest: 3 }, [-3, 0, 3]).all()).toEqual({ p: 1, hits: 3, tried: 3, exact: true });
  });
});

describe("what p is", () => {
  const seen = { sum: 5, largest: 8 };

  it("the share of hits when all were looked at", () => {
    expect(counted(seen, [5, 1, 2, -3]).all()).toEqual({ p: 0.25, hits: 1, tried: 4, exact: true });
  });

  it("with the real labels counted in when some were drawn, so never 0", () => {
    expect(counted(seen, [5, 1, 2, -3]).drawn()).toEqual({ p: 0.4, hits: 1, tried: 4, exact: false });
    expect(counted(seen, [1, 2, -3]).drawn()).toEqual({ p: 0.25, hits: 0, tried: 3, exact: false });
  });
});

it("the limits let 12 plants against 12, and 20 pairs, be counted in full, and no more (METHODS 8.4)", () => {
  expect(MOST_SPLITS).toBeGreaterThanOrEqual(choose(24, 12));
  expect(MOST_SPLITS).toBeLessThan(choose(25, 12));
  expect(MOST_FLIPS).toBe(20);
});
