import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { openPage } from "./page";
import { openPracticePage, put, ready, select, selected, value } from "./practicePage";

let page: Page;

beforeAll(async () => {
  page = await openPracticePage();
});

it("says that it is starting until the first answer stands in its cell", async () => {
  const fresh = await openPage("practice/");
  expect(await fresh.locator("#starting").textContent()).toBe("Starting…");
  await ready(fresh);
  expect(await value(fresh, "The trial", "H2")).toBeCloseTo(0.4414, 4);
  await fresh.close();
});

it("says whose data these are and where they go", async () => {
  const bar = await page.locator("header.bar").textContent();
  expect(bar).toContain("Fairbed practice sheet");
  expect(bar).toContain("For practice: invented data. Nothing leaves this computer.");
  expect(bar).toContain("F6");
});

it("shows a percent as a percent", async () => {
  expect(await page.evaluate(() => fairbedPractice.shown("The trial", "H2"))).toBe("44.1%");
});

it("opens on an answer, so that the pane explains one", async () => {
  const fresh = await openPracticePage();
  expect(await selected(fresh)).toBe("The trial!H2");
  await expect.poll(() => fresh.locator("#pane").textContent()).toContain("44 %");
  await fresh.close();
});

it("has its sheets in order", async () => {
  await select(page, "The trial", "A1");
  const names: string[] = [];
  for (let turn = 0; turn < 11; turn += 1) {
    names.push((await selected(page)).split("!")[0] ?? "");
    await page.keyboard.press("Control+Alt+PageDown");
  }
  expect(names).toEqual([
    "The trial",
    "Plant by plant",
    "Pick log, messy",
    "Pick log, clean",
    "Two plants each",
    "Totals only",
    "Many crops",
    "Does it pay",
    "Before planting",
    "Luck in class",
    "Try your own",
  ]);
  expect(await selected(page)).toMatch(/^The trial!/);
});

it("F6 goes from the cells to the pane and back, and the arrow keys follow", async () => {
  await select(page, "The trial", "B2");
  await page.keyboard.press("F6");
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("pane");
  await page.keyboard.press("F6");
  await page.keyboard.press("ArrowDown");
  expect(await selected(page)).toBe("The trial!B3");
});

it("Escape leads from the pane back to the cells", async () => {
  await select(page, "The trial", "B2");
  await page.keyboard.press("F6");
  await page.keyboard.press("Escape");
  await page.keyboard.press("ArrowRight");
  expect(await selected(page)).toBe("The trial!C2");
});

it("shows a heading that looks like a page's own code as the text it is", async () => {
  const hostile = "<img src=x onerror=document.title='taken'>";
  const title = await page.title();
  expect(await put(page, ["Try your own", "A1"], hostile)).toBe(hostile);
  await put(page, ["Try your own", "A2"], 3);
  await put(page, ["Try your own", "B2"], 4);
  await select(page, "Try your own", "E10");
  await page.evaluate(() => new Promise(requestAnimationFrame));
  expect(await page.locator("img[src=x]").count()).toBe(0);
  expect(await page.title()).toBe(title);
});

it("puts the pane below the cells on a narrow screen, without scrolling sideways", async () => {
  await page.setViewportSize({ width: 390, height: 844 });
  const [grid, pane] = await Promise.all([page.locator("#grid").boundingBox(), page.locator("#pane").boundingBox()]);
  expect(pane?.y).toBeGreaterThanOrEqual((grid?.y ?? 0) + (grid?.height ?? 0));
  expect(pane?.width).toBe(390);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  await page.setViewportSize({ width: 1366, height: 768 });
});

it("turns dark with the reader's computer", async () => {
  const workbench = page.locator("[data-u-comp=workbench-layout]");
  await page.emulateMedia({ colorScheme: "dark" });
  await expect.poll(() => workbench.getAttribute("class")).toContain("univer-dark");
  expect(await page.evaluate(() => fairbedPractice.port.theme())).toEqual({ dark: true });
  await page.emulateMedia({ colorScheme: "light" });
  await expect.poll(() => workbench.getAttribute("class")).not.toContain("univer-dark");
});
