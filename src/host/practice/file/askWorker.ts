import type { FileJob, FileReport } from "../../../files/fileJob";

/** A job that a worker does. */
export interface RunningJob {
  /** What came of it; "cancelled" after `cancel`. */
  readonly outcome: Promise<Exclude<FileReport, { report: "progress" }> | "cancelled">;
  /** Stops the worker where it stands. */
  cancel(): void;
}

/**
 * Gives a job to a worker of its own.
 *
 * @param start starts a worker
 * @param onProgress hears how many sheets are done, and of how many
 */
export function askWorker(
  start: () => Worker,
  job: FileJob,
  onProgress: (done: number, of: number) => void,
): RunningJob {
  const worker = start();
  let cancel = () => {};
  const outcome = new Promise<Exclude<FileReport, { report: "progress" }> | "cancelled">((resolve) => {
    cancel = () => resolve("cancelled");
    worker.addEventListener("message", ({ data }: MessageEvent<FileReport>) => {
      if (data.report === "progress") onProgress(data.done, data.of);
      else resolve(data);
    });
    worker.addEventListener("error", (event) => {
      event.preventDefault();
      resolve({
        report: "refused",
        sentence: "This file is too much for this computer's memory, or this page is damaged.",
      });
    });
    worker.postMessage(job);
  });
  return { outcome: outcome.finally(() => worker.terminate()), cancel };
}
