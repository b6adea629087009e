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
});
