import { describe, expect, it } from "vitest";
import { moneyLeft } from "../../src/methods/moneyLeft";
import { near } from "../near";

// METHODS 10, item 53, worked out by hand there: 1.2 kg more (0.3 to 2.1), sold at 2.50, for 1.10 more a plant.
const item53 = { extra: 1.2, range: { low: 0.3, high: 2.1 }, usualMean: 2 };
const costs = { price: 2.5, extraCost: 1.1 };

it("1.90 of 3.00 is left (−0.35 to 4.15), and 0.44 kg would just pay", () => {
  const found = moneyLeft(item53, costs);
  near("left", found.left, 1.9, { absolute: 1e-14 });
  near("low", found.leftRange?.low ?? Number.NaN, -0.35, { absolute: 1e-14 });
  near("high", found.leftRange?.high ?? Number.NaN, 4.15, { absolute: 1e-14 });
  near("worth", found.worth, 3, { absolute: 1e-14 });
  near("cost of a kilogram more", found.costOfExtra, 11 / 12, { absolute: 1e-14 });
  near("break-even", found.breakEvenExtra, 0.44, { absolute: 1e-14 });
  near("break-even change", found.breakEvenChange, 0.22, { absolute: 1e-14 });
});

describe("edges", () => {
  it("without a range none is made up", () => {
    expect(moneyLeft({ ...item53, range: null }, costs).leftRange).toBeNull();
  });

  it("no extra harvest has no cost of its own", () => {
    for (const extra of [0, -1]) expect(moneyLeft({ ...item53, extra }, costs).costOfExtra).toBeNaN();
  });

  it("a usual of 0 has no percent to break even at", () => {
    expect(moneyLeft({ ...item53, usualMean: 0 }, costs).breakEvenChange).toBeNaN();
  });

  it("a cheaper way breaks even below the usual", () => {
    expect(moneyLeft(item53, { price: 2, extraCost: -1 }).breakEvenExtra).toBe(-0.5);
  });
});
