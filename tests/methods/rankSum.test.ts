import { describe, expect, it } from "vitest";
import { rankSum } from "../../src/methods/rankSum";
import { near } from "../near";
import reference from "../reference/ranks.json";
import { printed } from "./printed";
import { trialOf } from "./trialOf";

describe("rankSum agrees with R's wilcox.test(), and with enumeration where ranks tie", () => {
  const cases = reference.cases.filter(({ method }) => method === "rankSum");
  it.each(cases)("$trial: W $statistic, ties $ties", (known) => {
    const { usual, tried } = trialOf(known.trial);
    const found = rankSum(usual, tried);
    expect(found.statistic).toBe(known.statistic);
    expect(found.exact).toBe(known.exact);
    near("p-value", found.pValue, known.pValue, { relative: 1e-12 });
  });
});

it("rankSum agrees with Hollander & Wolfe (1973), p. 69: W 35, one-sided p .1272", () => {
  const { usual, tried } = trialOf("permeability");
  const { statistic, pValue } = rankSum(usual, tried);
  expect(statistic).toBe(35);
  printed("one-sided p", pValue / 2, "0.1272");
});

describe("rankSum keeps its shape", () => {
  it("swapping groups mirrors W and keeps the p-value", () => {
    const { usual, tried } = trialOf("ties");
    const [there, back] = [rankSum(usual, tried), rankSum(tried, usual)];
    expect(back.statistic).toBe(usual.length * tried.length - there.statistic);
    expect(back.pValue).toBe(there.pValue);
  });

  it("ties that converted units hide are ties", () => {
    expect(rankSum([0.3, 0.5], [0.1 + 0.2, 0.7])).toEqual(rankSum([0.3, 0.5], [0.3, 0.7]));
  });

  it("all plants equal: p 1, counted or approximated", () => {
    expect(rankSum([2, 2], [2, 2])).toEqual({ statistic: 2, pValue: 1, exact: true });
    const many = Array<number>(30).fill(2);
    expect(rankSum(many, many)).toEqual({ statistic: 450, pValue: 1, exact: false });
  });
});
