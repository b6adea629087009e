import { describe, expect, it } from "vitest";
import { drawLots, type Layout } from "../../src/methods/drawLots";
import reference from "../reference/drawLots.json";

const { plans, orders24, orders6 } = reference.cases;
const inEight = { treatments: 4, eachInBed: 1, beds: 8 };
const twoOfTwo = { treatments: 2, eachInBed: 2, beds: 1 };
const numbers = Array.from({ length: 10_000 }, (_, at) => at + 1);

describe("agrees with the recipe written a second time, in R", () => {
  it.each(plans)("number $number: $treatments, $each each, beds $beds", ({ treatments, each, number, beds, order }) => {
    const layout = { treatments: treatments.length, eachInBed: each / (beds ?? 1), beds: beds ?? 1 };
    const drawn = drawLots(layout, number).flat();
    expect(drawn.map((treatment) => treatments[treatment])).toEqual(order);
  });
});

describe("balance", () => {
  it.each([
    { treatments: 2, eachInBed: 6, beds: 1 },
    { treatments: 4, eachInBed: 1, beds: 8 },
    { treatments: 3, eachInBed: 2, beds: 5 },
    { treatments: 20, eachInBed: 3, beds: 3 },
  ])("$treatments treatments, $eachInBed each in each of $beds beds, whatever the number", (layout) => {
    const bed = Array.from({ length: layout.treatments }, () => layout.eachInBed);
    for (const number of [...numbers.slice(0, 200), 0, -1, 999_999_999_999_999]) {
      const drawn = drawLots(layout, number);
      expect(drawn).toHaveLength(layout.beds);
      for (const order of drawn) expect(counts(order, layout.treatments)).toEqual(bed);
    }
  });
});

describe("chance, over the numbers 1 to 10 000", () => {
  // METHODS 8.10: 1/k, give or take 4 standard errors
  it.each([
    [{ treatments: 2, eachInBed: 6, beds: 1 }, 0],
    [{ treatments: 3, eachInBed: 4, beds: 1 }, 0],
    [inEight, 0],
    [inEight, 7],
    [{ treatments: 6, eachInBed: 2, beds: 2 }, 1],
  ] as const)("%o: each treatment comes first in bed %d as often as any other", (layout, bed) => {
    const firsts = numbers.map((number) => drawLots(layout, number)[bed]?.[0] ?? -1);
    const share = 1 / layout.treatments;
    const standardError = Math.sqrt((share * (1 - share)) / numbers.length);
    for (const count of counts(firsts, layout.treatments)) {
      expect(Math.abs(count / numbers.length - share)).toBeLessThan(4 * standardError);
    }
  });

  // thresholds: R's qchisq(0.999, df), in tests/reference/drawLots.R
  it.each([
    { what: "first bed of eight, one of each of four", layout: inEight, bed: 0, orders: 24, threshold: orders24 },
    { what: "last bed of eight, one of each of four", layout: inEight, bed: 7, orders: 24, threshold: orders24 },
    { what: "two each of two", layout: twoOfTwo, bed: 0, orders: 6, threshold: orders6 },
  ])("all orders are equally likely: $what", ({ layout, bed, orders, threshold }) => {
    const seen = ordersOf(layout, bed);
    expect(seen.size).toBe(orders);
    const due = numbers.length / orders;
    const chiSquare = [...seen.values()].reduce((sum, count) => sum + (count - due) ** 2 / due, 0);
    expect(chiSquare).toBeLessThan(threshold);
  });
});

it("the same number gives the same plan, the next number another", () => {
  const layout = { treatments: 4, eachInBed: 2, beds: 4 };
  expect(drawLots(layout, 12)).toEqual(drawLots(layout, 12));
  expect(drawLots(layout, 13)).not.toEqual(drawLots(layout, 12));
});

function counts(order: readonly number[], treatments: number): readonly number[] {
  return Array.from({ length: treatments }, (_, at) => order.filter((treatment) => treatment === at).length);
}

function ordersOf(layout: Layout, bed: number): ReadonlyMap<string, number> {
  const seen = new Map<string, number>();
  for (const number of numbers) {
    const order = String(drawLots(layout, number)[bed]);
    seen.set(order, (seen.get(order) ?? 0) + 1);
  }
  return seen;
}
