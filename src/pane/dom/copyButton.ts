import type { Context } from "../context";
import { button } from "./blocks";
import { element } from "./element";

/** A button that puts a text on the clipboard and says so. */
export function copyButton(text: string, { announce }: Pick<Context, "announce">): HTMLElement {
  const made = button("Copy", () => void copy(), "small");
  return made;

  async function copy(): Promise<void> {
    const done = await toClipboard(text, made);
    made.textContent = done ? "Copied" : "Not copied";
    announce(done ? "Copied." : "The text could not be copied. Mark it and press Ctrl+C.");
  }
}

/** Office shows some panes in frames that may not use the clipboard; there the old way still works. */
async function toClipboard(text: string, near: HTMLElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return byCommand(text, near);
  }
}

function byCommand(text: string, near: HTMLElement): boolean {
  const area = element("textarea", { class: "unseen", "aria-hidden": "true", tabindex: -1 });
  area.value = text;
  near.after(area);
  area.select();
  const done = document.execCommand("copy");
  area.remove();
  near.focus();
  return done;
}
