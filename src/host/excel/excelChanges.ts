/** What an event's registration gives back. */
interface Registered {
  readonly context: OfficeExtension.ClientRequestContext;
  readonly remove: () => void;
}

/** How long to wait until Excel is asked once more to tell of changes, in milliseconds. */
const pause = 2000;

/**
 * Calls back after the selection moved, a cell changed, or a sheet was calculated anew (our own results come late).
 * Excel refuses listeners while a cell is being typed in: then it is asked again until it agrees, and there is one
 * call for what was missed.
 *
 * @returns ends the calls
 */
export function excelChanges(notice: () => void): () => void {
  let ended = false;
  const tell = async () => {
    if (!ended) notice();
  };
  const registered = listening(tell, () => ended);
  return () => {
    ended = true;
    // One that Excel does not take off calls back no more all the same.
    void registered.then(remove).catch(() => undefined);
  };
}

async function listening(tell: () => Promise<void>, isEnded: () => boolean): Promise<readonly Registered[]> {
  for (let refused = false; !isEnded(); refused = true) {
    try {
      // Without a limit in time: a listener that Excel puts on late could never be taken off.
      const listeners = await Excel.run((context) => listen(context, tell));
      if (refused) await tell();
      return listeners;
    } catch (reason) {
      if (!(reason instanceof OfficeExtension.Error)) throw reason;
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
  }
  return [];
}

async function listen(context: Excel.RequestContext, tell: () => Promise<void>): Promise<readonly Registered[]> {
  const { workbook } = context;
  const listeners = [
    workbook.onSelectionChanged.add(tell),
    workbook.worksheets.onChanged.add(tell),
    workbook.worksheets.onCalculated.add(tell),
  ];
  await context.sync();
  return listeners;
}

/** A listener is taken off in the context in which it was put on. */
async function remove(listeners: readonly Registered[]): Promise<void> {
  for (const listener of listeners) listener.remove();
  await listeners[0]?.context.sync();
}
