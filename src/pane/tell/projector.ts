import { button, paragraphs } from "../dom/blocks";
import { element } from "../dom/element";
import { draw } from "../plots/draw";
import type { Picture } from "../plots/picture";

/** What a room is shown: a picture under its title, and the sentences that go with it. */
export interface Shown {
  readonly title: string;
  readonly picture: Picture;
  readonly says: readonly string[];
}

/**
 * Shows a picture over the whole page, in letters that can be read from the back of a room; light, as projectors want
 * it. Escape or the button close it, and the keyboard is back where it was.
 */
export function projector({ title, picture, says }: Shown, near: HTMLElement): void {
  const close = button("Close", () => dialog.close(), "main");
  const heading = element("h2", {}, title);
  const dialog = element(
    "dialog",
    { class: "fairbed projector", "data-theme": "light", "aria-label": title },
    element("div", { class: "heading" }, heading, close),
    draw(picture).root,
    element("div", { class: "told" }, ...paragraphs(says)),
  );
  dialog.addEventListener("close", () => dialog.remove());
  near.after(dialog);
  dialog.showModal();
}
