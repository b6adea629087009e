import { doFileJob, type FileJob } from "../files/fileJob";

/** Files are read and written beside the page, which stays free to answer, and to stop it. */
self.addEventListener("message", ({ data }: MessageEvent<FileJob>) => {
  self.postMessage(doFileJob(data, (report) => self.postMessage(report)));
});
