import { inExcel } from "./inExcel";

/** What an event's registration gives back. */
interface Registered {
  readonly context: OfficeExtension.ClientRequestContext;
  readonly remove: () => void;
}

/**
 * Calls back after the selection moved, a cell changed, or a sheet was calculated anew (our own results come late).
 * Where Excel refuses the listeners there are no calls.
 *
 * @returns ends the calls
 */
export function excelChanges(notice: () => void): () => void {
  let ended = false;
  const tell = async () => {
    if (!ended) notice();
  };
  const registered = inExcel<readonly Registered[]>("", async (context) => {
    const { workbook } = context;
    const listeners = [
      workbook.onSelectionChanged.add(tell),
      workbook.worksheets.onChanged.add(tell),
      workbook.worksheets.onCalculated.add(tell),
    ];
    await context.sync();
    return listeners;
  }).catch((): readonly Registered[] => []);
  return () => {
    ended = true;
    void registered.then(remove);
  };
}

/** A listener is taken off in the context in which it was put on. */
async function remove(listeners: readonly Registered[]): Promise<void> {
  for (const listener of listeners) listener.remove();
  await listeners[0]?.context.sync();
}
