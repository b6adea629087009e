import type { Page } from "playwright-core";
import type { PracticeDoor } from "../../src/host/practice/practiceDoor";
import type { Cell } from "../../src/nouns/cell";
import { openPage } from "./page";

declare global {
  /** The running practice sheet, in the page. */
  var fairbedPractice: PracticeDoor;
}

/** Opens the practice sheet and waits until its first results stand in the cells. */
export async function openPracticePage(): Promise<Page> {
  const page = await openPage("practice/");
  await ready(page);
  return page;
}

/** Waits until the page no longer says that it is starting. */
export async function ready(page: Page): Promise<void> {
  await page.locator("#starting").waitFor({ state: "detached", timeout: 90_000 });
}

/** The value of one cell, not as formatted. */
export function value(page: Page, sheet: string, address: string): Promise<Cell> {
  return page.evaluate(([name, cell]) => fairbedPractice.value(name, cell), [sheet, address] as const);
}

/** Puts content into a cell and answers with its value once it is calculated. */
export async function put(page: Page, at: readonly [string, string], content: string | number): Promise<Cell> {
  await page.evaluate(([[sheet, address], entered]) => fairbedPractice.put(sheet, address, entered), [
    at,
    content,
  ] as const);
  return value(page, ...at);
}

export function select(page: Page, sheet: string, address: string): Promise<void> {
  return page.evaluate(([name, cell]) => fairbedPractice.port.select(name, cell), [sheet, address] as const);
}

/** Where the selection stands: "The trial!B2:B9". */
export function selected(page: Page): Promise<string> {
  return page.evaluate(async () => {
    const { sheet, address } = await fairbedPractice.port.selection();
    return `${sheet}!${address}`;
  });
}

/** Types into the selected cell as a grower does, and waits for the results. */
export async function type(page: Page, content: string): Promise<void> {
  await page.keyboard.type(content);
  await page.keyboard.press("Enter");
  await settled(page);
}

/** Waits until the results of everything done so far stand in the cells. */
export function settled(page: Page): Promise<void> {
  return page.evaluate(() => fairbedPractice.settled());
}
