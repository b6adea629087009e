import { describe, expect, it } from "vitest";
import { countRatio } from "../../src/methods/countRatio";
import { near } from "../near";
import reference from "../reference/totals.json";
import { totalsOf } from "./totalsCases";

/** The digits of R's qbeta. */
const asR = { relative: 2e-13 };

describe("agrees with R's poisson.test for two counts", () => {
  it.each(Object.entries(reference.cases))("%s", (_name, { totals, exact, exact99 }) => {
    const { usual, tried } = totalsOf(totals);
    const at95 = countRatio(usual, tried, 0.95);
    const at99 = countRatio(usual, tried, 0.99);
    near("low", at95.low, Number(exact.low), asR);
    near("high", at95.high, Number(exact.high === "Inf" ? Number.POSITIVE_INFINITY : exact.high), asR);
    near("low at 99 %", at99.low, Number(exact99.low), asR);
    near("high at 99 %", at99.high, Number(exact99.high === "Inf" ? Number.POSITIVE_INFINITY : exact99.high), asR);
  });
});

it("agrees with the printed ranges of 60 in 51 477.5 against 30 in 54 308.7, and of R's help (11/800, 21/3011)", () => {
  const chest = countRatio({ total: 30, plants: 54308.7 }, { total: 60, plants: 51477.5 }, 0.95);
  near("low", chest.low, 1.339736, { absolute: 5e-7 });
  near("high", chest.high, 3.388366, { absolute: 5e-7 });
  const help = countRatio({ total: 21, plants: 3011 }, { total: 11, plants: 800 }, 0.95);
  near("low", help.low, 0.8584264, { absolute: 5e-8 });
  near("high", help.high, 4.277266, { absolute: 5e-7 });
});

it.each([
  [0, 3, 0.0884],
  [2, 6, 0.1749],
])(
  "is no bolder than the E-test of Krishnamoorthy & Thomson (2004): %d v %d of 100 have p %d there, so no change is still inside",
  (few, more, p) => {
    const { low, high } = countRatio({ total: few, plants: 100 }, { total: more, plants: 100 }, 1 - p);
    expect(low).toBeLessThan(1);
    expect(high).toBeGreaterThan(1);
  },
);

it("leaves one end open beside a total of 0, and both where both are 0", () => {
  expect(countRatio({ total: 0, plants: 2 }, { total: 5, plants: 2 }, 0.95).high).toBe(Number.POSITIVE_INFINITY);
  expect(countRatio({ total: 5, plants: 2 }, { total: 0, plants: 2 }, 0.95).low).toBe(0);
  expect(countRatio({ total: 0, plants: 2 }, { total: 0, plants: 2 }, 0.95)).toEqual({ low: NaN, high: NaN });
});

it("the open end's partner solves its binomial equation: the new bore all of 5, so share⁵ is a fortieth", () => {
  const share = 40 ** (-1 / 5);
  near("low", countRatio({ total: 0, plants: 2 }, { total: 5, plants: 3 }, 0.95).low, ((share / (1 - share)) * 2) / 3, {
    relative: 1e-13,
  });
});
