import type { Desk } from "../answers/desk";
import { startPane } from "../pane/pane";
import "./practice.css";

/** The spreadsheet is megabytes to read: the page shows itself before that begins. */
requestAnimationFrame(() => setTimeout(start));

async function start(): Promise<void> {
  const starting = place("starting");
  try {
    const { openPractice } = await import("../host/practice/openPractice");
    const sheet = await openPractice({ grid: place("grid"), pane: place("pane"), startWorker });
    startPane(place("pane"), sheet, desk());
    starting.remove();
  } catch (reason) {
    starting.textContent =
      "The practice sheet could not start. Load the page again; if that does not help, try a newer browser.";
    throw reason;
  }
}

function startWorker(): Worker {
  return new Worker(new URL("./fileWorker.ts", import.meta.url));
}

/** The functions file leaves its desk on the page, so that cell and pane ask the same one. */
function desk(): Desk {
  const running = (globalThis as { [key: symbol]: Desk | undefined })[Symbol.for("fairbed.desk")];
  if (running === undefined) throw new Error("functions.js left no desk");
  return running;
}

function place(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`no #${id} in the page`);
  return found;
}
