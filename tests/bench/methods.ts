import jstat from "jstat";
import * as simple from "simple-statistics";
import { answer } from "../../src/functions/answer";
import { compareMeans } from "../../src/methods/compareMeans";
import { labelSwap } from "../../src/methods/labelSwap";
import * as chiSquare from "../../src/numerics/chiSquare";
import * as fisherF from "../../src/numerics/fisherF";
import { mean, variance } from "../../src/numerics/moments";
import * as normal from "../../src/numerics/normal";
import { twoSidedCritical, twoSidedTail } from "../../src/numerics/studentT";
import { additions, twoPassSum } from "./bareWork";
import type { Work } from "./contest";
import { contest, heading, type Rival } from "./report";
import { column, nested } from "./trial";

const MANY = 500_000;
/** Choices of 12 of 24. */
const RELABELINGS = 2_704_156;

/** Two treatments of half a million plants each; reading cells takes so long that a tenth of them must do for the door. */
export function longColumns(): void {
  heading("Welch's test with the percent range on long columns");
  const [usual, tried] = [column(MANY, 1), column(MANY, 2)];
  const long = [nested(usual), nested(tried)] as const;
  const short = [long[0].slice(0, MANY / 10), long[1].slice(0, MANY / 10)] as const;
  const bare = (ranges: readonly [number[][], number[][]]): Rival => ({
    name: "bare two-pass sum of the nested ranges",
    work: () => twoPassSum(ranges[0]) + twoPassSum(ranges[1]),
    target: { most: 2 },
  });
  const method = () => compareMeans(usual, tried, { layout: "separate", confidence: 0.95 });
  contest("method alone, 2 × 500 000", method, [bare(long)]);
  contest("the cell's whole answer, 2 × 50 000", () => answer("COMPARETWO", [...short], {}), [bare(short)]);
}

export function shuffles(): void {
  heading("Swapping labels, all relabelings");
  const bare = { name: "a loop of 2 704 156 additions", work: () => additions(RELABELINGS), target: { most: 5 } };
  contest("12 against 12", () => labelSwap(column(12, 1), column(12, 2)), [bare]);
}

/** Tails, quantiles and averages, ours / each library's that has them; theirs keep 7 digits or fewer, ours 13. */
export function againstLibraries(): void {
  heading("Distributions and averages / jstat's own, simple-statistics' own");
  const values = column(1000, 4);
  contest("t, two-sided tail", () => twoSidedTail(2.3, 13.7), [jstats(() => 2 * jstat.studentt.cdf(-2.3, 13.7))]);
  contest("t, quantile", () => twoSidedCritical(0.05, 13.7), [jstats(() => jstat.studentt.inv(0.975, 13.7))]);
  contest("normal tail", () => normal.upperTail(1.7), [
    jstats(() => jstat.normal.cdf(-1.7, 0, 1)),
    simples(() => simple.cumulativeStdNormalProbability(-1.7)),
  ]);
  contest("normal quantile", () => normal.quantile(0.9), [
    jstats(() => jstat.normal.inv(0.9, 0, 1)),
    simples(() => simple.probit(0.9)),
  ]);
  contest("F, upper tail", () => fisherF.upperTail(3.1, 3, 21), [jstats(() => 1 - jstat.centralF.cdf(3.1, 3, 21))]);
  contest("chi-square, upper tail", () => chiSquare.upperTail(9, 4), [jstats(() => 1 - jstat.chisquare.cdf(9, 4))]);
  contest("mean of 1000", () => mean(values), [jstats(() => jstat.mean(values)), simples(() => simple.mean(values))]);
  contest("variance of 1000", () => variance(values), [
    jstats(() => jstat.variance(values, true)),
    simples(() => simple.sampleVariance(values)),
  ]);
}

function jstats(work: Work): Rival {
  return { name: "jstat", work };
}

function simples(work: Work): Rival {
  return { name: "simple-statistics", work };
}
