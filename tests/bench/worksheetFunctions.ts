import { answer } from "../../src/functions/answer";
import { dunnett } from "../../src/numerics/dunnett";
import { twoSidedPower } from "../../src/numerics/noncentralT";
import { parsed, sumsByKey, twoPassSum } from "./bareWork";
import type { Work } from "./contest";
import { pickLog } from "./pickLog";
import { contest, heading, type Rival, say } from "./report";
import { column, nested, trial } from "./trial";

const [usual, tried] = [nested(column(8, 1)), nested(column(8, 2))];
const four = trial(4, 8, 3);
const log = pickLog(16, 10, 5);
const bare = (name: string, work: Work): Rival => ({ name: `bare ${name}`, work });
const twoPasses = bare("two-pass sum", () => twoPassSum(usual) + twoPassSum(tried));
const pickSums = bare("sums by plant", () => sumsByKey(log.plants, log.amounts));
const fourPasses = bare("two-pass sum", () => twoPassSum(four.amounts));
const onePower = bare("power of one trial", () => twoSidedPower(2.145, 14, 2.5));

/** A new distribution each time: nothing is kept of the one before. */
let unlike = 0;
const freshLambdas = (): readonly number[] => {
  unlike += 1e-9;
  return new Array<number>(3).fill(Math.SQRT1_2 - unlike);
};

/** Every worksheet function on a typical trial, the way a cell asks. */
export function worksheetFunctions(): void {
  heading("Worksheet functions on a typical trial, a call of the door / the bare work");
  const calls: readonly (readonly [id: string, given: readonly unknown[], rival: Rival])[] = [
    ["UPDOWN", [usual, tried], twoPasses],
    ["PERPLANT", [usual], twoPasses],
    ["UNEVENNESS", [four.amounts, null, four.treatments], fourPasses],
    ["COMPARETWO", [usual, tried], twoPasses],
    ["COMPAREMANY", [four.amounts, four.treatments, null, null, "way 0"], fourPasses],
    ["PLANTSNEEDED", [[[0.2]], [[0.25]]], onePower],
    ["SMALLESTCHANGE", [[[8]], [[0.25]]], onePower],
    ["CHANCETOSEE", [[[0.2]], [[8]], [[0.25]]], onePower],
    ["DRAWLOTS", [[[4]], [[8]], [[1015]]], bare("two-pass sum", () => twoPassSum(four.amounts))],
    ["TOTALSONLY", [[[812]], [[8]], [[1190]], [[8]]], twoPasses],
    ["WORTHIT", [usual, tried, [[2.5]], [[0.4]]], twoPasses],
    ["MANYTRIALS", [usual, tried], twoPasses],
    ["TALLYPICKS", [log.plants, log.dates, log.amounts], pickSums],
    ["PICKCURVE", [log.treatments, log.dates, log.amounts], pickSums],
    ["HALFPICKED", [log.plants, log.dates, log.amounts], pickSums],
    ["LOOKOVER", [log.amounts], bare("parse of each cell", () => parsed(log.amounts))],
    ["PLAINNUMBER", [log.amounts], bare("parse of each cell", () => parsed(log.amounts))],
  ];
  const found = calls.map(([id, given, rival]) => ({ id, ...contest(id, () => answer(id, given, {}), [rival]) }));
  const worst = found.toSorted((one, other) => other.ratio - one.ratio)[0];
  const slowest = found.toSorted((one, other) => other.ms - one.ms)[0];
  say(`furthest from its bare work: ${worst?.id}; slowest: ${slowest?.id}, ${slowest?.ms.toFixed(2)} ms a call`);
}

/** COMPAREMANY within beds against one tail of its own distribution, and the largest trial it takes. */
export function severalTreatments(): void {
  heading("COMPAREMANY");
  const tail = () => dunnett(freshLambdas()).tail(2.5, 21);
  let seed = 0;
  const ask = (plants: number, beds: number, options: readonly unknown[]) => () => {
    seed += 1;
    const { amounts, treatments, beds: labels } = trial(plants, beds, seed);
    const [withBeds, ...rest] = options;
    return answer("COMPAREMANY", [amounts, treatments, null, withBeds === "beds" ? labels : null, ...rest], {});
  };
  contest("4 × 8 with beds, new plants each time", ask(4, 8, ["beds", "way 0"]), [
    { name: "one bare Dunnett tail", work: tail, target: { most: 3 } },
  ]);
  const kept = dunnett(freshLambdas());
  kept.critical(0.05, 21);
  contest("a Dunnett tail of a distribution already known", () => kept.tail(2.5, 21), [
    { name: "one bare Dunnett tail", work: tail },
  ]);
  const large = [
    ["against the usual", ["none", "way 0"]],
    ["against the usual, with beds", ["beds", "way 0"]],
    ["all pairs", ["none"]],
    ["own unevenness", ["none", null, "own unevenness"]],
  ] as const;
  for (const [name, options] of large) {
    contest(`20 × 50 ${name}`, ask(20, 50, options), [{ name: "one bare Dunnett tail", work: tail }]);
  }
}
