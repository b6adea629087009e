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
    return await asked<UnsavedWork | undefined>("readonly", (store) => store.get("work"));
  } catch {
    return undefined;
  }
}

/** Takes the work out of the browser's storage. */
export async function forgetWork(): Promise<void> {
  await asked("readwrite", (store) => store.delete("work")).catch(() => undefined);
}

async function asked<Found>(
  mode: IDBTransactionMode,
  ask: (store: IDBObjectStore) => IDBRequest<Found>,
): Promise<Found> {
  const open = await opened();
  try {
    const transaction = open.transaction(shelf, mode);
    const request = ask(transaction.objectStore(shelf));
    await completed(transaction);
    return request.result;
  } finally {
    open.close();
  }
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(database, 1);
    opening.addEventListener("upgradeneeded", () => opening.result.createObjectStore(shelf));
    opening.addEventListener("success", () => resolve(opening.result));
    opening.addEventListener("error", () => reject(opening.error));
  });
}

/** A request may succeed and its work still not be kept: a full disk is told of when the transaction ends. */
function completed(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.addEventListener("complete", () => resolve());
    transaction.addEventListener("abort", () => reject(transaction.error));
  });
}
