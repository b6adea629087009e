import { writeFileSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import { bundleCalibration } from "./bundleCalibration.js";

// npm run calibrate                 makes the whole page, tests/calibration/table.md, anew
// npm run calibrate -- lost 2000    prints the blocks with "lost" in their title, from at most 2000 trials a case

/** @typedef {import("../tests/calibration/calibrate.js").Piece} Piece */
/** @typedef {import("../tests/calibration/calibrate.js").PieceDone} PieceDone */

const page = fileURLToPath(new URL("../tests/calibration/table.md", import.meta.url));
const [words = "", trials = Number.POSITIVE_INFINITY] = process.argv.slice(2);
const part = { words, trials: Number(trials) };

const bundle = await bundleCalibration();
/** @type {typeof import("../tests/calibration/calibrate.js")} */
const { outcome, pieces } = await import(bundle);
const began = performance.now();
const done = await runAll(pieces(part));
const { text, broken } = outcome(done, part);
if (process.argv.length === 2) writeFileSync(page, text);
console.log(text);
console.error(
  `${Math.round((performance.now() - began) / 1000)} s, ${Math.round(process.cpuUsage().user / 1e6)} s of computing`,
);
for (const sentence of broken) console.error(`Promise broken: ${sentence}`);
process.exitCode = broken.length > 0 ? 1 : 0;

/**
 * Hands out the pieces to as many threads as there are processors.
 *
 * @param {readonly Piece[]} all
 * @returns {Promise<PieceDone[]>}
 */
async function runAll(all) {
  const waiting = all.values();
  const threads = Array.from({ length: availableParallelism() }, () => runThread(waiting));
  return (await Promise.all(threads)).flat();
}

/**
 * @param {Iterator<Piece>} waiting
 * @returns {Promise<PieceDone[]>}
 */
function runThread(waiting) {
  const worker = new Worker(new URL("./calibrateThread.js", import.meta.url), { workerData: bundle });
  /** @type {PieceDone[]} */
  const done = [];
  return new Promise((resolve, reject) => {
    const handOut = () => {
      const { value, done: isOver } = waiting.next();
      if (!isOver) return worker.postMessage(value);
      resolve(done);
      return worker.terminate();
    };
    worker.on("error", reject);
    worker.on("message", (/** @type {PieceDone} */ piece) => {
      done.push(piece);
      handOut();
    });
    handOut();
  });
}
