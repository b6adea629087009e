import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { near } from "../near";
import { matrix, number } from "./call";

// the first is far from the rest, so that no range ends with its own average or total
const plants = fc
  .array(fc.integer({ min: 200, max: 400 }), { minLength: 3, maxLength: 7 })
  .map((values) => [...values.map((value) => value / 10), 61.37]);
const how = fc.constantFrom("separate", "equal unevenness", "ranks");
const runs = { numRuns: 100, seed: 3 };

/** COMPARETWO's figures by label; texts stand as they are. */
function figures(usual: readonly unknown[], tried: readonly unknown[], way: string): ReadonlyMap<unknown, unknown> {
  return new Map(
    matrix("COMPARETWO", usual, tried, "table", way)
      .slice(0, -3)
      .map(([label, value]) => [label, value]),
  );
}

/** All figures of `other` are those of `one`, but for the labels that `expected` gives another value. */
function expectLike(
  one: ReadonlyMap<unknown, unknown>,
  other: ReadonlyMap<unknown, unknown>,
  expected: (label: string, value: number) => number = (_label, value) => value,
): void {
  for (const [label, value] of one) {
    const now = other.get(label);
    if (typeof value !== "number") expect(now, String(label)).toBe(value);
    else near(String(label), Number(now), expected(String(label), value), { relative: 1e-8, absolute: 1e-9 });
  }
}

describe("COMPARETWO", () => {
  it("does not mind the order of separate plants", () => {
    fc.assert(
      fc.property(plants, plants, how, (usual, tried, way) => {
        const turned = [...tried.slice(1, -1).reverse(), tried.at(0), tried.at(-1)];
        expectLike(
          figures(usual, tried, way),
          figures([...usual.slice(1, -1).reverse(), usual.at(0), usual.at(-1)], turned, way),
        );
      }),
      runs,
    );
  });

  it("does not mind the order of pairs, as long as partners stay together", () => {
    fc.assert(
      fc.property(plants, plants, (usual, tried) => {
        const size = Math.min(usual.length, tried.length);
        const [before, after] = [usual.slice(-size), tried.slice(-size)];
        const turn = (values: readonly number[]) => [
          ...values.slice(1, -1),
          ...values.slice(0, 1),
          ...values.slice(-1),
        ];
        expectLike(figures(before, after, "pairs"), figures(turn(before), turn(after), "pairs"));
      }),
      runs,
    );
  });

  it("in another unit, amounts are larger and nothing else", () => {
    fc.assert(
      fc.property(plants, plants, how, (usual, tried, way) => {
        const times = (values: readonly number[]) => values.map((value) => value * 1000);
        const amounts = /^Average|^Difference/;
        expectLike(figures(usual, tried, way), figures(times(usual), times(tried), way), (label, value) =>
          amounts.test(label) ? value * 1000 : value,
        );
      }),
      runs,
    );
  });

  it("with usual and new swapped, difference and t change sign, p values stay", () => {
    fc.assert(
      fc.property(plants, plants, fc.constantFrom("separate", "equal unevenness"), (usual, tried, way) => {
        const [one, other] = [figures(usual, tried, way), figures(tried, usual, way)];
        for (const label of ["p value", "Label-swap p", "df"])
          near(label, Number(other.get(label)), Number(one.get(label)));
        for (const [label, mirror] of [
          ["Difference", "Difference"],
          ["t", "t"],
          ["Difference low", "Difference high"],
          ["Difference high", "Difference low"],
        ]) {
          near(`${label}`, Number(other.get(mirror)), -Number(one.get(label)), { relative: 1e-9, absolute: 1e-9 });
        }
        near("times", Number(other.get("Times as much")), 1 / Number(one.get("Times as much")));
        near("low", 1 + Number(other.get("Change low")), 1 / (1 + Number(one.get("Change high"))), { relative: 1e-8 });
      }),
      runs,
    );
  });

  it("an empty cell, or one not weighed, changes nothing", () => {
    fc.assert(
      fc.property(
        plants,
        plants,
        how,
        fc.constantFrom("not weighed", null, "", "?", true),
        (usual, tried, way, nothing) => {
          const with1 = [...usual.slice(0, 2), nothing, ...usual.slice(2)];
          expectLike(figures(usual, tried, way), figures(with1, [...tried, "forgot"], way));
        },
      ),
      runs,
    );
  });

  it("a lost plant changes the counts of losses alone", () => {
    fc.assert(
      fc.property(plants, plants, how, (usual, tried, way) => {
        const [one, other] = [figures(usual, tried, way), figures(usual, ["lost", ...tried], way)];
        expect(other.get("Lost, new")).toBe(1);
        for (const label of ["Lost, new", "Loss p"])
          for (const map of [one, other]) (map as Map<unknown, unknown>).delete(label);
        expectLike(one, other);
      }),
      runs,
    );
  });

  it("headings or none, addresses or none: equal figures", () => {
    fc.assert(
      fc.property(plants, plants, fc.constantFrom("separate", "pairs"), (usual, tried, way) => {
        const size = Math.min(usual.length, tried.length);
        const [before, after] = [usual.slice(-size), tried.slice(-size)];
        expectLike(figures(before, after, way), figures(["Bare soil", ...before], ["Straw (g)", ...after], way));
      }),
      runs,
    );
  });
});

describe("plans", () => {
  const change = fc.double({ min: 0.05, max: 2, noNaN: true });
  const unevenness = fc.double({ min: 0.05, max: 0.8, noNaN: true });

  it("more plants, a larger change, evener plants, fewer treatments: never a smaller chance", () => {
    fc.assert(
      fc.property(change, unevenness, fc.integer({ min: 2, max: 30 }), (size, uneven, each) => {
        const chance = number("CHANCETOSEE", size, each, uneven);
        expect(number("CHANCETOSEE", size, each + 1, uneven)).toBeGreaterThanOrEqual(chance - 1e-12);
        if (size * 1.1 < 2)
          expect(number("CHANCETOSEE", size * 1.1, each, uneven)).toBeGreaterThanOrEqual(chance - 1e-12);
        expect(number("CHANCETOSEE", size, each, uneven * 1.1)).toBeLessThanOrEqual(chance + 1e-12);
        expect(number("CHANCETOSEE", size, each, uneven, "Chance it is enough to matter")).toBeLessThanOrEqual(
          chance + 1e-12,
        );
      }),
      runs,
    );
  });
});
