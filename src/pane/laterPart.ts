import { element } from "./dom/element";
import type { Part } from "./dom/tabs";

/**
 * A part of the pane whose body is fetched when it is first opened, so that the pane itself loads at once.
 *
 * @param fill puts the body into its element, and answers with what is to be done whenever the part is opened
 */
export function laterPart(name: string, fill: (root: HTMLElement) => Promise<() => void>): Part {
  const root = element("div", {}, element("p", { class: "hint" }, "Loading…"));
  let opened: Promise<() => void> | null = null;
  return { name, root, beside: null, open: () => void open() };

  async function open(): Promise<void> {
    opened ??= fill(root);
    try {
      (await opened)();
    } catch (reason) {
      opened = null;
      root.textContent = "This part could not be loaded. Check the connection, then open it again.";
      throw reason;
    }
  }
}
