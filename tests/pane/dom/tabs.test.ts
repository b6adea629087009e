// @vitest-environment jsdom
import { expect, it } from "vitest";
import { element } from "../../../src/pane/dom/element";
import { tabs } from "../../../src/pane/dom/tabs";

function threeTabs() {
  const opened: string[] = [];
  const parts = ["Plan", "Check", "Explain"].map((name) => ({
    name,
    root: element("div"),
    beside: null,
    open: () => void opened.push(name),
  }));
  document.body.replaceChildren(...tabs(parts, 2));
  return { opened, parts, handles: [...document.querySelectorAll<HTMLElement>('[role="tab"]')] };
}

it("opens one part at a time, its name being the one stop of the Tab key", () => {
  const { opened, parts, handles } = threeTabs();
  expect(opened).toEqual(["Explain"]);
  handles[0]?.click();
  expect(parts.map(({ root }) => root.hidden)).toEqual([false, true, true]);
  expect(handles.map((handle) => handle.getAttribute("tabindex"))).toEqual(["0", "-1", "-1"]);
  expect(handles.map((handle) => handle.getAttribute("aria-selected"))).toEqual(["true", "false", "false"]);
});

it.each([
  [2, "ArrowRight", "Plan"],
  [2, "ArrowLeft", "Check"],
  [1, "Home", "Plan"],
  [1, "End", "Explain"],
])("from tab %d, %s leads to %s", (from, key, name) => {
  const { opened, handles } = threeTabs();
  handles[from]?.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true }));
  expect(opened.at(-1)).toBe(name);
  expect(document.activeElement?.textContent).toBe(name);
});

it("leaves other keys alone", () => {
  const { opened, handles } = threeTabs();
  handles[0]?.dispatchEvent(new KeyboardEvent("keydown", { key: "a", bubbles: true }));
  expect(opened).toEqual(["Explain"]);
});
