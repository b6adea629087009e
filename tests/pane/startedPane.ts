import { vi } from "vitest";
import type { Desk } from "../../src/answers/desk";
import { startPane } from "../../src/pane/pane";
import { type HandMadeDesk, handMadeDesk } from "./handMadeDesk";
import { type MemorySheet, memorySheet } from "./memorySheet";

/** A pane beside a sheet with two treatments in B1:C4 and a comparison of them in E1, which is selected. */
export interface StartedPane {
  readonly root: HTMLElement;
  readonly sheet: MemorySheet;
  readonly desk: HandMadeDesk;
}

export const comparison = "=FAIRBED.COMPARETWO(B1:B4,C1:C4)";

export async function startedPane(): Promise<StartedPane> {
  // what the pane loads with its first comparison, or with a part, is at hand, so that nothing below waits for it
  await Promise.all([
    import("../../src/pane/beside/around"),
    import("../../src/pane/explain/viewOf"),
    import("../../src/pane/plan/plan"),
  ]);
  vi.stubGlobal("matchMedia", () => ({ matches: false, addEventListener: () => {} }));
  const desk = handMadeDesk();
  const sheet = memorySheet(desk as Desk);
  sheet.fill("B1", [
    ["Bare soil", "Straw"],
    [2000, 3000],
    [3000, 5000],
    [4000, 4000],
  ]);
  await sheet.enter("E1", comparison);
  sheet.click("E1");
  const root = document.createElement("main");
  document.body.replaceChildren(root);
  startPane(root, sheet, desk);
  await settled();
  return { root, sheet, desk };
}

/** Lets everything that was asked of the sheet come back. */
export async function settled(): Promise<void> {
  await new Promise((resolve) => setTimeout(resolve));
  await new Promise((resolve) => setTimeout(resolve));
}

/** The visible button with that text, in the open part. */
export function buttonNamed(root: HTMLElement, text: string): HTMLButtonElement {
  const found = [...root.querySelectorAll("button")].find((button) => button.textContent === text && isShown(button));
  if (found === undefined) throw new Error(`no button "${text}"`);
  return found;
}

function isShown(node: Element): boolean {
  return node.closest("[hidden]") === null;
}

/** What can be read in the open part, without what is only for screen readers. */
export function shownText(root: HTMLElement): string {
  const part = [...root.querySelectorAll('[role="tabpanel"]')].find(isShown);
  const copy = part?.cloneNode(true) as HTMLElement;
  for (const hidden of copy.querySelectorAll("[hidden], .unseen, title, desc")) hidden.remove();
  return copy.textContent.replaceAll("\u00a0", " ");
}
