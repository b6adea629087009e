import { existsSync, readFileSync } from "node:fs";
import { createContext, Script } from "node:vm";
import { answer } from "../../src/functions/answer";
import { twoPassSum } from "./bareWork";
import { contest, figure, heading, say } from "./report";
import { column, nested } from "./trial";

const built = "dist/functions.js";

/** The worksheet functions' file from text to associated functions, 1 000 formulas, and what they leave in memory. */
export function startUp(): void {
  heading("Start, recalculation, memory (Node)");
  if (existsSync(built)) parse(readFileSync(built, "utf8"));
  else say(`skipped: no ${built}; npm run build makes it`);
  recalculate();
}

function parse(source: string): void {
  const associate = () => {
    let doors = 0;
    const context = createContext({ CustomFunctions: { associate: () => (doors += 1) } });
    new Script(source).runInContext(context);
    return doors;
  };
  const empty = () => new Script("1").runInContext(createContext({}));
  const { ms } = contest("functions.js, parsed and associated", associate, [{ name: "an empty script", work: empty }]);
  figure("functions.js, parsed and associated", ms, "ms");
}

/** Every formula with plants of its own, as a sheet holds them. */
function recalculate(): void {
  const sheets = Array.from({ length: 1000 }, (_, at) => [nested(column(8, 2 * at)), nested(column(8, 2 * at + 1))]);
  const all = () => sheets.map((ranges) => answer("COMPARETWO", ranges, {}));
  const bare = () => sheets.map(([usual = [], tried = []]) => twoPassSum(usual) + twoPassSum(tried));
  const { ms } = contest("1 000 COMPARETWO", all, [{ name: "1 000 bare two-pass sums", work: bare }]);
  figure("1 000 COMPARETWO", ms, "ms");
  figure(
    "kept in memory by 10 recalculations more",
    keptBy(() => repeat(10, all)),
    "kB",
  );
}

function repeat(times: number, work: () => unknown): void {
  for (let i = 0; i < times; i += 1) work();
}

/** Kilobytes that are still held afterwards and were not before; run once unmeasured, as first runs compile code. */
function keptBy(work: () => void): number {
  work();
  const before = heap();
  work();
  return (heap() - before) / 1024;
}

function heap(): number {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed;
}
