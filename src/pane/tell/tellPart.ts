import type { Context } from "../context";
import { element } from "../dom/element";
import type { Part } from "../dom/tabs";

/** The part of the pane that tells results to an audience. What it shows is fetched when it is first opened. */
export function tellPart(context: Context): Part {
  const root = element("div", {}, element("p", { class: "hint" }, "Loading…"));
  let opened: Promise<() => void> | null = null;
  return { name: "Tell", root, beside: null, open: () => void open() };

  async function open(): Promise<void> {
    opened ??= import("./tell").then(({ tell }) => tell(context, root));
    try {
      (await opened)();
    } catch (reason) {
      opened = null;
      root.textContent = "This part could not be loaded. Check the connection, then open it again.";
      throw reason;
    }
  }
}
