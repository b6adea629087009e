import { describe, expect, it } from "vitest";
import { signedRank } from "../../src/methods/signedRank";
import { near } from "../near";
import reference from "../reference/ranks.json";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

describe("signedRank agrees with R's wilcox.test(), and with enumeration where ranks tie", () => {
  const cases = reference.cases.filter(({ method }) => method === "signedRank");
  it.each(cases)("$trial: V $statistic, ties $ties", (known) => {
    const { usual, tried } = trialOf(known.trial);
    const found = signedRank(usual, tried);
    expect(found.statistic).toBe(known.statistic);
    expect(found.exact).toBe(known.exact);
    near("p-value", found.pValue, known.pValue, { relative: 1e-12 });
  });
});

it("signedRank agrees with Hollander & Wolfe (1973), p. 29: V 40, one-sided p .01953", () => {
  const { usual, tried } = trialOf("depression");
  const { statistic, pValue } = signedRank(usual, tried);
  expect(statistic).toBe(40);
  printed("one-sided p", pValue / 2, "0.01953");
});

describe("signedRank keeps its shape", () => {
  it("drops differences of 0, and says p 1 when none are left", () => {
    expect(signedRank([1, 2, 3, 9], [4, 7, 10, 9])).toEqual(signedRank([1, 2, 3], [4, 7, 10]));
    expect(signedRank([1, 2], [1, 2])).toEqual({ statistic: 0, pValue: 1, exact: true });
  });

  it("differences that are equal on paper tie although their doubles differ", () => {
    // 0.3 − 0.2 and 0.2 − 0.1 as against 3 − 2 and 2 − 1
    expect(signedRank([0.2, 0.1, 0.4], [0.3, 0.2, 0.1])).toEqual(signedRank([2, 1, 4], [3, 2, 1]));
  });

  // by hand: 1, −1 and 3 have the ranks 1.5, 1.5 and 3
  it("a gain and a loss that are equal on paper share their ranks", () => {
    expect(signedRank([0.2, 0.2, 0.1], [0.3, 0.1, 0.4]).statistic).toBe(4.5);
    expect(signedRank([0.2, 0.2, 0.1], [0.3, 0.1, 0.4])).toEqual(signedRank([2, 2, 1], [3, 1, 4]));
  });

  it("plants that all bore nothing have no differences: p 1", () => {
    expect(signedRank([0, 0], [0, 0])).toEqual({ statistic: 0, pValue: 1, exact: true });
  });

  // of 2²⁰ choices of signs the one with all gains and the one with all losses
  it("all flips are counted up to 20 pairs, and no further", () => {
    const gains = (n: number) => Array.from({ length: n }, (_, at) => at + 1);
    const nothing = new Array<number>(21).fill(0);
    expect(signedRank(nothing.slice(1), gains(20))).toEqual({ statistic: 210, pValue: 2 / 2 ** 20, exact: true });
    expect(signedRank(nothing, gains(21)).exact).toBe(false);
  });
});
