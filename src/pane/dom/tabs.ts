import { freshId } from "./blocks";
import { element } from "./element";

/** One part of the pane. */
export interface Part {
  readonly name: string;
  readonly root: HTMLElement;
  /** What stands beside the names of the parts while this one is open. */
  readonly beside: HTMLElement | null;
  /** Called each time the part is opened. */
  readonly open: () => void;
}

/** Where the arrow keys lead. */
const steps: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowRight: (at, count) => (at + 1) % count,
  ArrowLeft: (at, count) => (at + count - 1) % count,
  Home: () => 0,
  End: (_, count) => count - 1,
};

/**
 * The parts in a row, one of them open: the tabs pattern of the ARIA Authoring Practices (w3.org/WAI/ARIA/apg),
 * opened by arrow keys at once.
 *
 * @param first the number of the part that is open at the start
 */
export function tabs(parts: readonly Part[], first: number): readonly HTMLElement[] {
  const handles = parts.map((part, at) => handle(part, () => open(at)));
  const row = element("div", { role: "tablist", "aria-label": "Parts" }, ...handles);
  row.addEventListener("keydown", (event) => {
    const at = handles.indexOf(event.target as HTMLButtonElement);
    const next = steps[event.key]?.(at, handles.length);
    if (next === undefined) return;
    event.preventDefault();
    handles[next]?.focus();
    open(next);
  });
  open(first);
  const besides = parts.map(({ beside }) => beside);
  return [element("header", { class: "parts" }, row, ...besides), ...parts.map(({ root }) => root)];

  function open(at: number): void {
    for (const [index, part] of parts.entries()) {
      const chosen = index === at;
      handles[index]?.setAttribute("aria-selected", String(chosen));
      handles[index]?.setAttribute("tabindex", chosen ? "0" : "-1");
      part.root.hidden = !chosen;
      if (part.beside !== null) part.beside.hidden = !chosen;
    }
    parts[at]?.open();
  }
}

function handle(part: Part, press: () => void): HTMLButtonElement {
  const { root } = part;
  root.id = freshId();
  const made = element("button", { type: "button", role: "tab", "aria-controls": root.id, onclick: press }, part.name);
  made.id = freshId();
  root.setAttribute("role", "tabpanel");
  root.setAttribute("aria-labelledby", made.id);
  return made;
}
