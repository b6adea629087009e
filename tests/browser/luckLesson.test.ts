import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { near } from "../near";
import luck from "../reference/luck.json";
import { openPracticePage, put, selected, settled, value } from "./practicePage";

const sheet = "Luck lesson";
let page: Page;
let pane: Locator;

beforeAll(async () => {
  page = await openPracticePage();
  pane = page.locator("#pane");
  await pane.getByRole("tab", { name: "Plan" }).click();
  await pane.getByText("Show a class what luck does").click();
});

it("says how often luck alone gives such a lead, and follows the fields", async () => {
  // METHODS 11: 13.9 % of 200 000 trials of plants that are not quite normal; R's integral over normal ones is 14.3 %
  await pane.getByText("a lead of 30 % or more in about 14 of 100 trials").waitFor();
  await pane.getByLabel("Plants in each team").fill("8");
  await pane.getByText("a lead of 30 % or more in about 4 of 100 trials").waitFor();
  await pane.getByLabel("Plants in each team").fill("2");
  await pane.getByText("Plants in each team: type a whole number from 3 to 20.").waitFor();
  expect(await pane.getByRole("button", { name: "Make the sheet for the class" }).isDisabled()).toBe(true);
  await pane.getByLabel("Plants in each team").fill("4");
});

it("lays out a sheet whose plants wait to be weighed, and then shows R's leads", async () => {
  await pane.getByRole("button", { name: "Make the sheet for the class" }).click();
  await expect.poll(() => selected(page)).toBe(`${sheet}!I2`);
  await settled(page);
  expect((await value(page, sheet, "F2")) ?? "", "no lead before the weighing").toBe("");
  const { plants, gaps, wide, widest, unevenness } = luck.cases;
  for (const [at, grams] of plants.entries()) await put(page, [sheet, `B${at + 2}`], grams);
  await settled(page);
  for (const [at, gap] of gaps.entries()) {
    near(`draw ${at + 1}`, Number(await value(page, sheet, `F${at + 2}`)), gap, { relative: 1e-9 });
  }
  expect(await value(page, sheet, "I5")).toBe(wide);
  near("widest", Number(await value(page, sheet, "I6")), widest, { relative: 1e-9 });
  near("unevenness", Number(await value(page, sheet, "I7")), unevenness, { relative: 1e-9 });
  near("draw 18", Number(await value(page, sheet, "I3")), gaps[17] ?? 0, { relative: 1e-9 });
});

it("another number deals anew", async () => {
  await put(page, [sheet, "I2"], 3);
  await settled(page);
  near("draw 3", Number(await value(page, sheet, "I3")), luck.cases.gaps[2] ?? 0, { relative: 1e-9 });
});

it("with invented weights it can be shown today, on a sheet of its own", async () => {
  await pane.getByLabel("Weights").selectOption("invented");
  await pane.getByRole("button", { name: "Make the sheet for the class" }).click();
  await expect.poll(() => selected(page)).toBe(`${sheet} 2!I2`);
  await settled(page);
  near("unevenness", Number(await value(page, `${sheet} 2`, "I7")), 0.25, { absolute: 0.002 });
  expect(Number(await value(page, `${sheet} 2`, "I3"))).toBeGreaterThan(0);
});
