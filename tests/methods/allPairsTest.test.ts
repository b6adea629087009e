import { describe, expect, it } from "vitest";
import { allPairsTest, pairsOf } from "../../src/methods/allPairsTest";
import { contrast } from "../../src/methods/contrast";
import { near } from "../near";
import { manyCases, modelOf } from "./manyCases";

describe("allPairsTest agrees with R's ptukey(), within what ptukey() holds at these degrees of freedom", () => {
  it.each(manyCases)("$name", (known) => {
    const model = modelOf(known);
    const { pValue, isBelow } = allPairsTest(model);
    for (const { one, other, difference, p } of known.tukey) {
      const found = contrast(model, { usual: one, tried: other });
      near(`difference ${one}-${other}`, found.difference, difference, { relative: 1e-9 });
      near(`p ${one}-${other}`, pValue(found.t), p, { absolute: 1e-8 });
      expect([p - 1e-8, p + 1e-8].map((level) => isBelow(found.t, level))).toEqual([false, true]);
    }
  });
});

it("Tukey's ranges of NIST's e-Handbook 7.4.7.1 come out to the printed digits", () => {
  const known = [
    [6.9, 5.4, 5.8, 4.6, 4.0],
    [8.3, 6.8, 7.8, 9.2, 6.5],
    [8.0, 10.5, 8.1, 6.9, 9.3],
    [5.8, 3.8, 6.1, 5.6, 6.2],
  ];
  const value = known.flat();
  const treatment = known.flatMap((group, at) => group.map(() => at));
  const model = modelOf({ ...(manyCases[0] ?? expect.fail("no case")), value, treatment, beds: false });
  const { critical } = allPairsTest(model);
  const range = (usual: number, tried: number) => {
    const { difference, standardError } = contrast(model, { usual, tried });
    return [difference - critical * standardError, difference + critical * standardError];
  };
  const printed: readonly [number, number, number, number][] = [
    [0, 1, 0.29, 4.47],
    [0, 2, 1.13, 5.31],
    [3, 0, -2.25, 1.93],
    [2, 1, -2.93, 1.25],
    [3, 1, 0.13, 4.31],
    [3, 2, 0.97, 5.15],
  ];
  for (const [usual, tried, low, high] of printed) {
    const [from = 0, to = 0] = range(usual, tried);
    near("low", from, low, { absolute: 0.00501 });
    near("high", to, high, { absolute: 0.00501 });
  }
});

it("two things make 1 pair, three 3, four 6; one thing makes none", () => {
  expect([1, 2, 3, 4].map(pairsOf)).toEqual([0, 1, 3, 6]);
});
