import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { openPracticePage, select, value } from "./practicePage";

let page: Page;
let pane: Locator;

beforeAll(async () => {
  page = await openPracticePage();
  pane = page.locator("#pane");
  await pane.getByRole("tab", { name: "Plan" }).click();
});

/** What the open part says, with plain spaces. */
async function shown(): Promise<string> {
  return ((await pane.getByRole("tabpanel").textContent()) ?? "").replaceAll("\u00a0", " ");
}

it("plans from the room: what 20 plants each can show", async () => {
  await pane.getByLabel("Plants I have room for").fill("40");
  await pane.getByLabel("Ways to compare").selectOption("2");
  await expect.poll(shown).toMatch(/20 plants each show a change of \+\d+ % or more in 80 of 100 such trials/);
});

it("a hopeless plan names the ways out", async () => {
  await pane.getByLabel("Plants I have room for").fill("12");
  await pane.getByLabel("Ways to compare").selectOption("4");
  await expect.poll(shown).toContain("Ways out");
  expect(await shown()).toMatch(/demonstration/);
  expect(await shown()).toMatch(/fewer|second season/);
});

it("puts the plan's formulas into the sheet", async () => {
  await pane.getByLabel("Plants I have room for").fill("40");
  await pane.getByLabel("Ways to compare").selectOption("2");
  await select(page, "Before planting", "H20");
  await pane.getByText("Put this plan into the sheet").click();
  await pane.getByRole("button", { name: "Put it there" }).click();
  // METHODS 5.5 (R): 30 plants each at 35 % unevenness for +30 %; 34 set out when 10 % are lost
  await expect.poll(() => value(page, "Before planting", "I20")).toBe(34);
  await expect.poll(() => value(page, "Before planting", "I21")).toBeGreaterThan(0.3);
  expect(await value(page, "Before planting", "H22")).toBe("Chance to see a gain of 30 %");
});
