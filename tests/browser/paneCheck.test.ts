import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { openPracticePage, put, select, selected, value } from "./practicePage";

const messy = "Pick log, messy";
let page: Page;
let pane: Locator;

beforeAll(async () => {
  page = await openPracticePage();
  pane = page.locator("#pane");
  // the page's own policy lets no script in from elsewhere, so axe comes in by the browser's own door
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
});

const finding = () => pane.locator(".finding:visible").textContent();
const headings = () => pane.locator("h2:visible").allTextContents();

it("a formula's table is looked over, and the pane says what LOOKOVER says in a cell", async () => {
  await select(page, messy, "J2");
  await pane.getByRole("tab", { name: "Check" }).press("Enter");
  await expect.poll(finding).toContain("need a look");
  const said = await put(page, [messy, "L2"], `=FAIRBED.LOOKOVER('${messy}'!A1:F332)`);
  expect(await finding()).toBe(`${said}.`);
  expect((await headings()).slice(0, 3)).toEqual([
    "Unreadable: 1",
    "Possible totals or averages: 2",
    "Possible doubles: 1",
  ]);
});

it("a line chosen by keyboard selects its cell, and what was found stays", async () => {
  const before = await finding();
  await pane.getByRole("button", { name: /^A72 / }).press("Enter");
  await expect.poll(() => selected(page)).toBe(`${messy}!A72`);
  await expect
    .poll(() => pane.locator("[aria-current=true]").allTextContents())
    .toEqual(["A72 5/7: 5 July or 7 May Type it as year, month, day, such as 2023-07-05."]);
  expect(await finding()).toBe(before);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("A72");
});

it("a mended cell leaves the list; nothing else in the sheet was changed", async () => {
  await put(page, [messy, "A72"], "2023-07-05");
  await expect.poll(async () => (await headings())[0]).toBe("Possible totals or averages: 2");
  expect(await value(page, messy, "F60")).toBe(2220);
  await put(page, [messy, "A72"], "5/7");
  await expect.poll(async () => (await headings())[0]).toBe("Unreadable: 1");
});

it("from one cell of a table the whole table is checked", async () => {
  await select(page, "Pick log, clean", "D40");
  await pane.getByRole("button", { name: "Check the table around D40" }).press("Enter");
  await expect.poll(finding).toMatch(/^1944 cells read/);
});

it.each(["light", "dark"] as const)("axe finds nothing wrong with it, all folds open, %s", async (scheme) => {
  await page.emulateMedia({ colorScheme: scheme });
  await select(page, messy, "J8");
  await expect.poll(finding).toContain("1986 cells read");
  await pane.locator("[role=tabpanel]:not([hidden]) details:not([open]) > summary").evaluateAll((folds) => {
    for (const fold of folds) (fold as HTMLElement).click();
  });
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run: (where: string) => Promise<AxeResults> } }).axe.run("#pane"),
  );
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`)).toEqual([]);
});

it("at 350 px wide it fits", async () => {
  await page.setViewportSize({ width: 350, height: 900 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(350);
  expect(await page.evaluate(() => document.querySelector("#pane")?.scrollWidth)).toBeLessThanOrEqual(350);
});

it("a clean copy stands on a sheet of its own, adds up, and the log is as it was", async () => {
  await page.setViewportSize({ width: 1366, height: 768 });
  await select(page, messy, "J2");
  await expect
    .poll(() => pane.locator("code:visible").allTextContents())
    .toContain(`=FAIRBED.LOOKOVER('${messy}'!A1:F332)`);
  await pane.getByText("A clean copy on a new sheet").click();
  await pane.getByRole("button", { name: "Write a clean copy" }).press("Enter");
  await pane.getByText("The clean copy stands on the sheet “Clean copy”").waitFor();
  const tally = (sheet: string, rows: number) =>
    `=FAIRBED.TALLYPICKS('${sheet}'!C1:C${rows},'${sheet}'!A1:A${rows},'${sheet}'!F1:F${rows},"B5-2")`;
  expect(await put(page, ["Try your own", "L1"], tally("Clean copy", 329))).toBe(5240);
  expect(await value(page, messy, "F14")).toBe("0.235kg");
  expect(await value(page, "Clean copy", "F14")).toBe(235);
  expect(await value(page, "Clean copy", "H1")).toBe("Plant");
});
