import { element } from "./dom/element";
import type { Part } from "./dom/tabs";

/** Fills a part's element, and answers with what is to be called whenever the part is opened. */
export type Fill = (root: HTMLElement) => () => void;

/**
 * A part of the pane whose code is fetched when it is first opened, so that the pane starts without it.
 *
 * @param load fetches it; after it has failed, the next opening tries once more
 */
export function latePart(name: string, load: () => Promise<Fill>): Part {
  const root = element("div", {}, element("p", { class: "hint" }, "Loading…"));
  let opened: Promise<() => void> | null = null;
  return { name, root, beside: null, open: () => void open() };

  async function open(): Promise<void> {
    opened ??= load().then((fill) => fill(root));
    try {
      (await opened)();
    } catch (reason) {
      opened = null;
      root.textContent = "This part could not be loaded. Check the connection, then open it again.";
      throw reason;
    }
  }
}
