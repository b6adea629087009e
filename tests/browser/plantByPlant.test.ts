import type { Locator, Page } from "playwright-core";
import { beforeAll, beforeEach, expect, it } from "vitest";
import { openPracticePage, put, select, value } from "./practicePage";

/*
 * The demo in long form: plant, bed, mulch and grams in A to D, the answers in G. What a grower changes in a row shows in
 * the cells that answer, in the table below them, and in the pane.
 */

const sheet = "Plant by plant";
let page: Page;
let pane: Locator;

beforeAll(async () => {
  page = await openPracticePage();
  pane = page.locator("#pane");
});

beforeEach(async () => {
  await select(page, sheet, "G2");
  await expect.poll(() => pane.locator(".pin .cell").textContent()).toBe("G2");
});

const told = async () => (await pane.textContent())?.replaceAll("\u00a0", " ") ?? "";
const shown = (address: string) => value(page, sheet, address);
/** The row of a treatment in the pane's table. */
const row = async (name: string) => {
  const rows = await pane.getByRole("row").allTextContents();
  return rows.find((text) => text.startsWith(name))?.replaceAll("\u00a0", " ");
};

it("a plant that is lost: one plant fewer, one lost more, and the caution counts it", async () => {
  expect(await row("Straw")).toBe("Straw714390+46 %13 % to 95 %");
  expect([await shown("F12"), await shown("J12"), await shown("K12")]).toEqual(["Straw", 7, 1]);
  await put(page, [sheet, "D4"], "dead (slugs)");
  await expect.poll(told).toContain("There were 29 plants in 8 beds.");
  expect(await row("Straw")).toMatch(/^Straw62/);
  expect(await told()).toContain("Plants lost: 2 of 8 Straw and 1 of 8 Grass clippings.");
  expect([await shown("F12"), await shown("J12"), await shown("K12")]).toEqual(["Straw", 6, 2]);
  expect(await shown("G19")).toMatch(/^Plants lost: 2 of 8 Straw and 1 of 8 Grass clippings\./);
  await put(page, [sheet, "D4"], 3249);
  await expect.poll(() => row("Straw")).toMatch(/^Straw71/);
});

it("another spelling is the same treatment, another name a treatment of its own", async () => {
  await put(page, [sheet, "C9"], "  STRAW ");
  expect(await shown("G2")).toBe("Straw up; 2 not settled");
  await put(page, [sheet, "C9"], "Straw");
  await put(page, [sheet, "C4"], "Hay");
  expect(await shown("G2")).toMatch(/1 too few plants/);
  await expect.poll(told).toContain("4 treatments were each set against Bare soil.");
  expect(await row("Hay")).toMatch(/^Hay1/);
  await put(page, [sheet, "C4"], "Straw");
  await expect.poll(told).toContain("3 treatments were each set against Bare soil.");
  expect(await row("Hay")).toBeUndefined();
});

it("the usual under another name: the cell refuses, and the pane says which names there are", async () => {
  const bare = [3, 8, 13, 14, 19, 24, 27, 31];
  for (const at of bare) expect(await shown(`C${at}`)).toBe("Bare soil");
  for (const at of bare) await put(page, [sheet, `C${at}`], "Bare");
  expect(await page.evaluate((name) => fairbedPractice.shown(name, "G2"), sheet)).toBe("#VALUE!");
  await expect
    .poll(told)
    .toContain("No treatment is called “Bare soil”. The names are: Woodchip, Bare, Straw, Grass clippings.");
  for (const at of bare) await put(page, [sheet, `C${at}`], "Bare soil");
  await expect.poll(told).toContain("Straw gave 46 % more than Bare soil: enough to matter.");
});

it("a bed that is left blank: the row is left out of the comparison in beds, and reported", async () => {
  await put(page, [sheet, "B4"], "");
  await expect.poll(told).toContain("There were 29 plants in 8 beds.");
  await pane.getByText("How it was worked out").click();
  await expect.poll(told).toContain("4 treatments; 1 row without a treatment or bed left out.");
  expect(await shown("G18")).toMatch(/1 row without a treatment or bed left out$/);
  expect(await shown("J12")).toBe(6);
  await select(page, sheet, "G3");
  await expect.poll(told).toContain("There were 30 plants.");
  await put(page, [sheet, "B4"], 1);
  await select(page, sheet, "G2");
  await expect.poll(told).toContain("There were 30 plants in 8 beds.");
});

it("without the beds the pane says that they stand there, and compares within them on request", async () => {
  await select(page, sheet, "G3");
  await expect.poll(told).toContain("You planted in beds. Compare within them: that one counts, whatever it shows.");
  await pane.getByRole("button", { name: "Compare within beds" }).click();
  await select(page, sheet, "F26");
  const preview = pane.locator(".preview:visible");
  await expect.poll(() => preview.textContent()).toBe('=FAIRBED.COMPAREMANY(D1:D33,C1:C33,,B1:B33,"Bare soil")');
  await pane.getByRole("button", { name: "Put it there" }).click();
  await expect.poll(() => shown("F26")).toBe("Straw up; 2 not settled");
  await put(page, [sheet, "F26"], "");
});

it("starts from a cell of the table: finds its columns, and takes the bare soil for the usual", async () => {
  await select(page, sheet, "F28");
  await pane.getByLabel("What do you want to know?").selectOption({ label: "Which of several treatments did better?" });
  await select(page, sheet, "C12");
  await pane.getByRole("button", { name: "Find the columns around C12" }).click();
  await expect.poll(told).toContain("Amounts: Grams. Treatments: Mulch. Beds: Bed.");
  await expect.poll(() => pane.getByLabel("Which is the usual?").inputValue()).toBe("Bare soil");
  await select(page, sheet, "F27");
  await pane.getByRole("button", { name: "Put it there" }).first().click();
  await expect.poll(() => shown("F27")).toBe("Straw up; 2 not settled");
  await put(page, [sheet, "F27"], "");
});
