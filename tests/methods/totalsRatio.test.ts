import { it } from "vitest";
import { type TakenOfPlants, totalsRatio, unevennessToBeReal } from "../../src/methods/totalsRatio";
import { near } from "../near";
import reference from "../reference/totals.json";
import { totalsOf } from "./totalsCases";

const asR = { relative: 1e-13 };

const both = Object.values(reference.cases).flatMap((known) => ("counts35" in known ? [known] : []));

it.each(both)("$totals, by R's qnorm on the log ratio", ({ totals, real_below, ...known }) => {
  const { usual, tried } = totalsOf(totals);
  const check = (what: "counts35" | "counts60" | "weights35" | "weights20at90", taken: TakenOfPlants) => {
    const range = totalsRatio(usual, tried, taken);
    near(`${what} low`, range.low, known[what].low, asR);
    near(`${what} high`, range.high, known[what].high, asR);
  };
  check("counts35", { unevenness: 0.35, counts: true, confidence: 0.95 });
  check("counts60", { unevenness: 0.6, counts: true, confidence: 0.95 });
  check("weights35", { unevenness: 0.35, counts: false, confidence: 0.95 });
  check("weights20at90", { unevenness: 0.2, counts: false, confidence: 0.9 });
  near("real below", unevennessToBeReal(usual, tried, 0.95), real_below, asR);
});

it("agrees with the printed figures: 412 and 655 from 30 plants each, 24 and 72 from 2", () => {
  const taken = { unevenness: 0.35, counts: true, confidence: 0.95 };
  const berries = [
    { total: 412, plants: 30 },
    { total: 655, plants: 30 },
  ] as const;
  near("low", totalsRatio(...berries, taken).low, 1.3317, { absolute: 5e-5 });
  near("high", totalsRatio(...berries, taken).high, 1.8979, { absolute: 5e-5 });
  near("real below", unevennessToBeReal(...berries, 0.95), 0.916, { absolute: 5e-4 });
  const beans = [
    { total: 24, plants: 2 },
    { total: 72, plants: 2 },
  ] as const;
  near("low", totalsRatio(...beans, taken).low, 1.511, { absolute: 5e-4 });
  near("high", totalsRatio(...beans, taken).high, 5.957, { absolute: 5e-4 });
  near("real below", unevennessToBeReal(...beans, 0.95), 0.561, { absolute: 5e-4 });
});

it("a range that just reaches no change is the one at the unevenness below which the gap is real", () => {
  const [usual, tried] = [
    { total: 41.2, plants: 30 },
    { total: 65.5, plants: 29 },
  ];
  const unevenness = unevennessToBeReal(usual, tried, 0.95);
  near("low", totalsRatio(usual, tried, { unevenness, counts: false, confidence: 0.95 }).low, 1, { relative: 1e-14 });
});
