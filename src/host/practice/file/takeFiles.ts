import type { FileBar } from "./fileBar";

/** What the bar's buttons, keys and a dropped file do. */
export interface FileActions {
  open(file: File): Promise<void>;
  save(): Promise<void>;
  saveCsv(): Promise<void>;
}

/** Connects buttons, Ctrl+O, Ctrl+S and dropped files with what they do. */
export function takeFiles(bar: FileBar, actions: FileActions): void {
  bar.open.addEventListener("click", () => bar.choice.click());
  bar.save.addEventListener("click", () => void actions.save());
  bar.csv.addEventListener("click", () => void actions.saveCsv());
  bar.choice.addEventListener("change", () => {
    const [file] = bar.choice.files ?? [];
    if (file !== undefined) void actions.open(file);
    bar.choice.value = "";
  });
  // through the buttons, which do nothing while something is going on
  const keys = { o: () => bar.open.click(), s: () => bar.save.click() };
  window.addEventListener("keydown", (event) => onKey(event, keys), { capture: true });
  takeDropped((file) => {
    if (!bar.open.disabled) void actions.open(file);
  });
}

/** Heard before the grid hears it, which keeps every key for itself. */
function onKey(event: KeyboardEvent, actions: Readonly<Record<"o" | "s", () => void>>): void {
  const key = event.key.toLowerCase();
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey || !(key === "o" || key === "s")) return;
  event.preventDefault();
  event.stopPropagation();
  actions[key]();
}

/** A file dropped anywhere on the page; without this the browser would leave the page for it. */
function takeDropped(open: (file: File) => void): void {
  const holdsFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  window.addEventListener("dragover", (event) => {
    if (holdsFiles(event)) event.preventDefault();
  });
  window.addEventListener(
    "drop",
    (event) => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      event.stopPropagation();
      const [file] = event.dataTransfer?.files ?? [];
      if (file !== undefined) open(file);
    },
    { capture: true },
  );
}
