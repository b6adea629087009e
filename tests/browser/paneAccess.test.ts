import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { openPracticePage, put, select } from "./practicePage";

let page: Page;

beforeAll(async () => {
  page = await openPracticePage();
  // the page's own policy lets no script in from elsewhere, so axe comes in by the browser's own door
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
});

/** What axe-core finds wrong with the pane as it stands. */
async function violations(): Promise<readonly string[]> {
  const { violations: found } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run: (where: string) => Promise<AxeResults> } }).axe.run("#pane"),
  );
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
}

async function explain(sheet: string, address: string): Promise<void> {
  await select(page, sheet, address);
  await expect.poll(() => page.locator("#pane .pin .cell").textContent()).toBe(address);
}

it.each(["light", "dark"] as const)(
  "axe finds nothing wrong with an explanation, all folds open, %s",
  async (scheme) => {
    await page.emulateMedia({ colorScheme: scheme });
    await explain("The trial", "H3");
    await page.locator("#pane .explanation summary").evaluateAll((folds) => {
      for (const fold of folds) (fold as HTMLElement).click();
    });
    expect(await violations()).toEqual([]);
  },
);

it.each(["light", "dark"] as const)(
  "axe finds nothing wrong with several treatments, all folds open, %s",
  async (scheme) => {
    await page.emulateMedia({ colorScheme: scheme });
    await explain("Plant by plant", "G2");
    await page.locator("#pane .explanation summary").evaluateAll((folds) => {
      for (const fold of folds) (fold as HTMLElement).click();
    });
    expect(await violations()).toEqual([]);
  },
);

it.each(["light", "dark"] as const)("axe finds nothing wrong with the plan, %s", async (scheme) => {
  await page.emulateMedia({ colorScheme: scheme });
  await page.locator("#pane").getByRole("tab", { name: "Plan" }).click();
  await expect.poll(() => page.locator("#pane svg").count()).toBeGreaterThan(0);
  expect(await violations()).toEqual([]);
  await page.locator("#pane").getByRole("tab", { name: "Explain" }).click();
});

it.each(["light", "dark"] as const)(
  "axe finds nothing wrong with the part Tell, all folds open, %s",
  async (scheme) => {
    const pane = page.locator("#pane");
    await page.emulateMedia({ colorScheme: scheme });
    await pane.getByRole("tab", { name: "Tell" }).click();
    await pane.getByText("For a slide").waitFor();
    await pane.locator("[role=tabpanel]:not([hidden]) summary").evaluateAll((folds) => {
      for (const fold of folds) (fold as HTMLElement).click();
    });
    expect(await violations()).toEqual([]);
    await pane.getByRole("button", { name: "Show it big" }).press("Enter");
    expect(await violations()).toEqual([]);
    await page.keyboard.press("Escape");
    await expect.poll(() => page.evaluate(() => document.activeElement?.textContent)).toBe("Show it big");
    await pane.getByRole("tab", { name: "Explain" }).click();
  },
);

it.each(["light", "dark"] as const)("axe finds nothing wrong with the part Trial, %s", async (scheme) => {
  const pane = page.locator("#pane");
  await page.emulateMedia({ colorScheme: scheme });
  await pane.getByRole("tab", { name: "Trial" }).click();
  await pane.getByText("0 of 11 answered", { exact: true }).waitFor();
  expect(await violations()).toEqual([]);
  await pane.getByLabel("Change worth acting on, in %").fill("0");
  await pane.getByText("Not kept yet").waitFor();
  expect(await violations()).toEqual([]);
  await pane.getByLabel("Change worth acting on, in %").fill("");
  await pane.getByRole("tab", { name: "Explain" }).click();
});

it.each(["Trial", "Tell"])("at 350 px wide the part %s fits", async (part) => {
  await page.setViewportSize({ width: 350, height: 900 });
  await page.locator("#pane").getByRole("tab", { name: part }).click();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(350);
  expect(await page.evaluate(() => document.querySelector("#pane")?.scrollWidth)).toBeLessThanOrEqual(350);
  await page.locator("#pane").getByRole("tab", { name: "Explain" }).click();
  await page.setViewportSize({ width: 1366, height: 768 });
});

it("axe finds nothing wrong with the start of a question, nor with a refusal", async () => {
  await page.emulateMedia({ colorScheme: "light" });
  await select(page, "The trial", "J12");
  await expect.poll(() => page.locator("#pane").textContent()).toContain("What do you want to know?");
  expect(await violations()).toEqual([]);
  await put(page, ["The trial", "J13"], "=FAIRBED.UPDOWN(1,-2)");
  await select(page, "The trial", "J13");
  await expect.poll(() => page.locator("#pane").textContent()).toContain("a harvest cannot be below zero");
  expect(await violations()).toEqual([]);
});

it.each(["light", "dark"] as const)(
  "axe finds nothing wrong with a question about a whole table, %s",
  async (scheme) => {
    const pane = page.locator("#pane");
    await page.emulateMedia({ colorScheme: scheme });
    await select(page, "Plant by plant", "C26");
    await page.keyboard.press("F6");
    await page.keyboard.press("Escape");
    for (let down = 26; down < 33; down += 1) await page.keyboard.press("Shift+ArrowDown");
    await page.keyboard.press("Shift+ArrowRight");
    await pane
      .getByLabel("What do you want to know?")
      .selectOption({ label: "Which of several treatments did better?" });
    await pane.getByRole("button", { name: "Find the columns in C26:D33" }).click();
    await expect.poll(() => pane.textContent()).toContain("Amounts: D26:D33. Treatments: C26:C33. No beds.");
    await expect.poll(() => pane.textContent()).toContain("Treatments found:");
    expect(await violations()).toEqual([]);
    await pane.getByRole("button", { name: "Start over" }).click();
  },
);

it("at 350 × 378 px finding, picture and the line to repeat with its button are on the first screen", async () => {
  await page.setViewportSize({ width: 350, height: 900 });
  await explain("The trial", "H4");
  const top = (await page.locator("#pane").boundingBox())?.y ?? 0;
  for (const part of [".finding", "svg", "button:has-text('Copy')"]) {
    const box = await page.locator(`#pane ${part}:visible`).first().boundingBox();
    expect((box?.y ?? Number.POSITIVE_INFINITY) + (box?.height ?? 0) - top, part).toBeLessThanOrEqual(378);
  }
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(350);
});

it("at 350 px wide the table of treatments and the pairs fit", async () => {
  await page.setViewportSize({ width: 350, height: 900 });
  await explain("Plant by plant", "G2");
  await page.locator("#pane").getByText("All 6 pairs").click();
  await page.locator("#pane table").nth(1).waitFor();
  expect(await page.locator("#pane table").count()).toBe(2);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(350);
  expect(await page.evaluate(() => document.querySelector("#pane")?.scrollWidth)).toBeLessThanOrEqual(350);
});
