/** The places in the page's bar that files need. */
export interface FileBar {
  readonly open: HTMLButtonElement;
  readonly save: HTMLButtonElement;
  readonly csv: HTMLButtonElement;
  readonly cancel: HTMLButtonElement;
  readonly forget: HTMLButtonElement;
  /** The field behind the open button. */
  readonly choice: HTMLInputElement;
  readonly progress: HTMLProgressElement;
  /** What is going on, in a sentence. */
  readonly status: HTMLElement;
  /** The file's name. */
  readonly name: HTMLElement;
}

/** Finds the bar's places by their ids. */
export function fileBar(page: Document): FileBar {
  const place = <Place extends HTMLElement>(id: string) => {
    const found = page.getElementById(id);
    if (found === null) throw new Error(`no #${id} in the page`);
    return found as Place;
  };
  return {
    open: place("file-open"),
    save: place("file-save"),
    csv: place("file-csv"),
    cancel: place("file-cancel"),
    forget: place("file-forget"),
    choice: place("file-choice"),
    progress: place("file-progress"),
    status: place("file-status"),
    name: place("file-name"),
  };
}

/** Shows that something is going on, with a way to stop it; null: nothing is. */
export function showProgress(bar: FileBar, sentence: string, cancel: (() => void) | null): void {
  const busy = cancel !== null;
  bar.status.textContent = sentence;
  for (const button of [bar.open, bar.save, bar.csv]) button.disabled = busy;
  bar.cancel.hidden = !busy;
  bar.cancel.onclick = cancel;
  bar.progress.hidden = !busy;
  bar.progress.removeAttribute("value");
}
