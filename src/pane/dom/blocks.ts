import { type Child, element } from "./element";
import { unbroken } from "./unbroken";

let numbered = 0;

/** A name for an element that no other element of the page has. */
export function freshId(): string {
  numbered += 1;
  return `fairbed-${numbered}`;
}

/** A section under a heading of its own; `beside` stands at the end of the heading's line. */
export function section(heading: string, body: readonly Child[], beside: Child = null): HTMLElement {
  const id = freshId();
  const title = element("h2", { id }, heading);
  return element("section", { "aria-labelledby": id }, element("div", { class: "heading" }, title, beside), ...body);
}

/** A section that opens when its heading is pressed; `fill` makes its body when it is first opened. */
export function folded(heading: string, fill: () => readonly Child[]): HTMLDetailsElement {
  const fold = element("details", {}, element("summary", {}, heading));
  fold.addEventListener("toggle", () => {
    if (fold.open && fold.childElementCount === 1) fold.append(...fill().filter((child) => child !== null));
  });
  return fold;
}

/** Each sentence as a paragraph of its own. */
export function paragraphs(sentences: readonly string[]): readonly HTMLElement[] {
  return sentences.map((sentence) => element("p", {}, unbroken(sentence)));
}

/** A list of sentences; null when there are none. */
export function list(sentences: readonly string[]): HTMLElement | null {
  if (sentences.length === 0) return null;
  return element("ul", {}, ...sentences.map((sentence) => element("li", {}, unbroken(sentence))));
}

/** @param look its class: "plain", "main" for what is to be done next, "small" beside a line */
export function button(text: string, press: () => void, look = "plain"): HTMLButtonElement {
  return element("button", { type: "button", class: look, onclick: press }, text);
}

/** A field with its label above it; `hint` is read out with it. */
export function field(label: string, input: HTMLElement, hint: Child = null): HTMLElement {
  input.id = freshId();
  const help = hint === null ? null : element("p", { class: "hint", id: freshId() }, hint);
  if (help !== null) input.setAttribute("aria-describedby", help.id);
  return element("div", { class: "field" }, element("label", { for: input.id }, label), input, help);
}

/** A list to choose one from; the first is chosen. */
export function choice(options: readonly { readonly value: string; readonly text: string }[]): HTMLSelectElement {
  return element("select", {}, ...options.map(({ value, text }) => element("option", { value }, text)));
}
