import type { Book } from "../../../files/book";
import type { FileJob, FileReport, GridFunctions } from "../../../files/fileJob";
import type { Grid } from "../grid";
import { askWorker } from "./askWorker";
import { bookOfGrid } from "./bookOfGrid";
import { type FileBar, showProgress } from "./fileBar";
import { guardFile } from "./guardFile";
import { type Keeping, keepUnsaved } from "./keepUnsaved";
import { keptResults } from "./keptResults";
import { listed } from "./listed";
import { copyName, noFile, type OpenFile } from "./openFile";
import { saveDownload } from "./saveDownload";
import { showBook } from "./showBook";
import { takeFiles } from "./takeFiles";
import type { UnsavedWork } from "./unsavedWork";

/** What files in the practice sheet need of the page. */
export interface FilePage {
  readonly grid: Grid;
  readonly bar: FileBar;
  /** Ids of our functions: "COMPARETWO". */
  readonly own: readonly string[];
  /** Starts the worker that reads and writes files. */
  startWorker(): Worker;
}

type Outcome = Exclude<FileReport, { report: "progress" }>;

/** What is open, and what is to be kept of it. */
interface Session {
  readonly page: FilePage;
  readonly keeping: Keeping;
  file: OpenFile;
}

/**
 * Lets the grower open a file, work in it, and save a copy. Nothing leaves the computer.
 *
 * @param unsaved work of an earlier visit, which is shown at once
 */
export async function workWithFiles(page: FilePage, unsaved: UnsavedWork | undefined): Promise<void> {
  const { grid, bar } = page;
  const keeping = keepUnsaved(page, () => ({ file: session.file, present: present(session) }));
  const session: Session = { page, keeping, file: noFile };
  takeFiles(bar, {
    open: (chosen) => orSay(bar, openChosen(session, chosen)),
    save: () => orSay(bar, saveCopy(session)),
    saveCsv: () => orSay(bar, saveSheet(session)),
  });
  guardFile(
    grid,
    () => session.file,
    (sentence) => showProgress(bar, sentence, null),
  );
  if (unsaved === undefined) {
    keeping.begin();
    showProgress(bar, bar.status.textContent ?? "", null);
  } else await showUnsaved(session, unsaved);
}

/** Work that an older version of this page kept may be in a form that is not known here. */
async function showUnsaved(session: Session, { file, present: kept }: UnsavedWork): Promise<void> {
  const { grid, bar } = session.page;
  try {
    await showBook(grid, kept, file.name);
    show(session, file, "Your work that was not saved is back.");
    session.keeping.resume();
  } catch {
    showProgress(bar, "Work that was not saved on your last visit cannot be shown.", null);
  }
}

/** A slip of ours must not leave the bar at work for ever. */
async function orSay(bar: FileBar, work: Promise<void>): Promise<void> {
  try {
    await work;
  } catch (reason) {
    showProgress(bar, "That did not work. Load this page again, then try once more.", null);
    throw reason;
  }
}

function present({ page: { grid }, file }: Session): Book {
  return keptResults(file.book, file.first, bookOfGrid(grid, file.book.looks));
}

function show(session: Session, file: OpenFile, sentence: string): void {
  const { bar } = session.page;
  session.file = file;
  bar.name.textContent = file.name === noFile.name ? "For practice: invented data." : `${file.name}.`;
  showProgress(bar, sentence, null);
}

async function openChosen(session: Session, chosen: File): Promise<void> {
  const { page, keeping } = session;
  const asked = keeping.isDirty();
  if (asked && !mayLeaveChanges()) return;
  const bytes = await bytesOf(chosen);
  if (bytes === null) {
    showProgress(page.bar, `${chosen.name} cannot be read. Is it still there? Close it in other programs.`, null);
    return;
  }
  const job: FileJob = { job: "open", name: chosen.name, bytes, functions: functionsOf(page) };
  const opened = await done(page, job, `Opening ${chosen.name}…`);
  if (opened?.report !== "opened") return;
  if (!asked && keeping.isDirty() && !mayLeaveChanges()) {
    showProgress(page.bar, `${chosen.name} was not opened.`, null);
    return;
  }
  const { book, leftAlone, tied } = opened;
  await showBook(page.grid, book, chosen.name);
  const behind = /\.xls[xm]$/i.test(chosen.name) ? bytes : null;
  const first = bookOfGrid(page.grid, book.looks);
  show(session, { name: chosen.name, bytes: behind, book, first, tied }, openedSentence(leftAlone));
  keeping.begin();
  page.grid.focus();
}

function mayLeaveChanges(): boolean {
  return window.confirm("Your changes are not saved. Open another file all the same?");
}

/** Null of a file that was moved, or that another program holds. */
async function bytesOf(chosen: File): Promise<Uint8Array<ArrayBuffer> | null> {
  try {
    return new Uint8Array(await chosen.arrayBuffer());
  } catch {
    return null;
  }
}

async function saveCopy(session: Session): Promise<void> {
  const { page, keeping, file } = session;
  const name = copyName(file.name);
  const isSaved = keeping.saving();
  const job: FileJob = { job: "save", original: file.bytes, book: present(session), functions: functionsOf(page) };
  const saved = await done(page, job, "Saving a copy…");
  if (saved?.report !== "saved") return;
  saveDownload(name, saved.bytes);
  const meanwhile = isSaved() ? "" : " What you changed meanwhile is not in it.";
  showProgress(page.bar, `${savedSentence(name, saved.onlyValues)}${meanwhile}`, null);
}

async function saveSheet(session: Session): Promise<void> {
  const { page } = session;
  const sheet = page.grid.book.getActiveSheet().getSheetName();
  const saved = await done(page, { job: "csv", book: present(session), sheet }, `Saving ${sheet}…`);
  if (saved?.report !== "saved") return;
  saveDownload(`${sheet}.csv`, saved.bytes);
  showProgress(page.bar, `${sheet}.csv holds this sheet's values. Other sheets and formulas are not in it.`, null);
}

function functionsOf({ grid, own }: FilePage): GridFunctions {
  return { own, known: grid.functions() };
}

/** Has a worker do a job, and shows how it goes; undefined when it was refused or cancelled. */
async function done({ bar, startWorker }: FilePage, job: FileJob, sentence: string): Promise<Outcome | undefined> {
  const running = askWorker(startWorker, job, (count, of) => {
    bar.progress.max = of;
    bar.progress.value = count;
  });
  showProgress(bar, sentence, running.cancel);
  const outcome = await running.outcome;
  if (outcome === "cancelled") showProgress(bar, "Cancelled. Nothing has changed.", null);
  else if (outcome.report === "refused") showProgress(bar, outcome.sentence, null);
  else return outcome;
  return undefined;
}

function openedSentence(leftAlone: readonly string[]): string {
  const opened = "Opened on this computer; nothing was uploaded.";
  if (leftAlone.length === 0) return opened;
  return `${opened} Formulas shown by their last result, and left as they are: ${listed(leftAlone)}.`;
}

function savedSentence(name: string, onlyValues: readonly string[]): string {
  const saved = `Saved as ${name}. The file you opened is as it was.`;
  return onlyValues.length === 0 ? saved : `${saved} Saved by value, without their formula: ${listed(onlyValues)}.`;
}
