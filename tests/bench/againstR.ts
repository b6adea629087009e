import { spawnSync } from "node:child_process";
import { answer } from "../../src/functions/answer";
import { labelSwap } from "../../src/methods/labelSwap";
import { plantsNeeded } from "../../src/methods/plantsNeeded";
import { studentizedRange } from "../../src/numerics/studentizedRange";
import { rounds, spreadOf, type Work } from "./contest";
import { heading, line, say, type Target } from "./report";
import { column, nested, trial } from "./trial";

/** What loops.R prints: times in milliseconds a call, round by round. */
interface RTimes {
  readonly version: string;
  readonly multcompVersion?: string;
  readonly welch: readonly number[];
  readonly combn10: readonly number[];
  readonly power: readonly number[];
  readonly ptukey: readonly number[];
  readonly multcomp?: readonly number[];
}

/** Our time over R's for the same question, both in loops, R's inside one process of its own. */
export function againstR(): void {
  heading("Ours / R");
  const run = spawnSync("Rscript", ["--vanilla", "tests/bench/loops.R"], { encoding: "utf8" });
  if (run.status === 0) comparedWith(JSON.parse(run.stdout));
  else say("skipped: no Rscript here");
}

function comparedWith(found: RTimes): void {
  say(`${found.version}; multcomp ${found.multcompVersion ?? "is not installed: its line is skipped"}`);
  const [usual, tried] = [nested(column(8, 1)), nested(column(8, 2))];
  against("COMPARETWO 2 × 8 / t.test()", () => answer("COMPARETWO", [usual, tried], {}), found.welch);
  against("shuffle 10 against 10 / combn()", () => labelSwap(column(10, 1), column(10, 2)), found.combn10, {
    least: 100,
  });
  const plan = () => answer("PLANTSNEEDED", [[[0.2]], [[0.25]]], {});
  const search = () => plantsNeeded(0.2, 0.8, { unevenness: 0.25, treatments: 2, beds: null });
  against("plants needed, the method alone / power.t.test()", search, found.power, { least: 50 });
  against("PLANTSNEEDED, the cell's whole answer / power.t.test()", plan, found.power, { least: 50 });
  against("Tukey's tail, nothing kept / ptukey()", () => studentizedRange(4).tail(3.5, 21), found.ptukey);
  if (found.multcomp !== undefined) dunnettAgainst(found.multcomp);
}

function dunnettAgainst(multcomp: readonly number[]): void {
  let seed = 0;
  const ours = () => {
    seed += 1;
    const { amounts, treatments, beds } = trial(4, 8, seed);
    return answer("COMPAREMANY", [amounts, treatments, "table", beds, "way 0"], {});
  };
  against("COMPAREMANY 4 × 8 with beds, table / multcomp's p and ranges", ours, multcomp, { least: 20 });
}

/** Every round of ours against R's median. */
function against(what: string, ours: Work, theirs: readonly number[], target?: Target): void {
  const { median } = spreadOf(theirs);
  const times = rounds([ours]).map(([own = Number.NaN]) => own / median);
  line(what, spreadOf(times), target);
}
