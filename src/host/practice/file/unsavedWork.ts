import type { Book } from "../../../files/book";
import type { OpenFile } from "./openFile";

/** Work that was not saved when the page closed. */
export interface UnsavedWork {
  readonly file: OpenFile;
  readonly present: Book;
}

const database = "fairbed-practice";
const shelf = "unsaved";

/** Keeps the work in the browser's own storage on this computer. Rejects where the browser allows none. */
export async function keepWork(work: UnsavedWork): Promise<void> {
  await asked("readwrite", (store) => store.put(work, "work"));
}

/** The work that was kept; undefined where there is none, or the browser has no storage. */
export async function keptWork(): Promise<UnsavedWork | undefined> {
  try {
    return (await asked("readonly", (store) => store.get("work"))) as UnsavedWork | undefined;
  } catch {
    return undefined;
  }
}

/** Takes the work out of the browser's storage. */
export async function forgetWork(): Promise<void> {
  await asked("readwrite", (store) => store.delete("work")).catch(() => undefined);
}

async function asked(mode: IDBTransactionMode, ask: (store: IDBObjectStore) => IDBRequest): Promise<unknown> {
  const opening = indexedDB.open(database, 1);
  opening.addEventListener("upgradeneeded", () => opening.result.createObjectStore(shelf));
  const open = (await answer(opening)) as IDBDatabase;
  try {
    return await answer(ask(open.transaction(shelf, mode).objectStore(shelf)));
  } finally {
    open.close();
  }
}

function answer(request: IDBRequest): Promise<unknown> {
  return new Promise((resolve, reject) => {
    request.addEventListener("success", () => resolve(request.result));
    request.addEventListener("error", () => reject(request.error));
  });
}
