import { parentPort, workerData } from "node:worker_threads";

/** @type {typeof import("../tests/calibration/calibrate.js")} */
const { runPiece } = await import(workerData);
parentPort?.on("message", (piece) => parentPort?.postMessage(runPiece(piece)));
