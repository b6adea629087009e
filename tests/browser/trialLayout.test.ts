import { readFileSync } from "node:fs";
import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { near } from "../near";
import lots from "../reference/drawLots.json";
import harvest from "../reference/practiceCells.json";
import { grownOn, mulches } from "./grownOn";
import { openPracticePage, put, selected, settled, type, value } from "./practicePage";

const [four, , two] = lots.cases.plans;
let page: Page;
let pane: Locator;

beforeAll(async () => {
  page = await openPracticePage();
  pane = page.locator("#pane");
  await pane.getByRole("tab", { name: "Plan" }).click();
  await pane.getByText("Draw lots and make the record sheet").click();
});

/** Fills the plan and the layout, and makes the sheet. */
async function layOut(room: number, names: readonly string[]): Promise<void> {
  await pane.getByLabel("Plants I have room for").fill(String(room));
  await pane.getByLabel("Ways to compare").selectOption(String(names.length));
  await pane.getByLabel("Beds", { exact: true }).selectOption("one each");
  await expect.poll(() => pane.getByLabel("Plants of each").inputValue()).toBe(String(room / names.length));
  for (const [at, name] of names.entries()) {
    await pane.getByLabel(at === 0 ? "The usual way" : `New way ${at}`, { exact: true }).fill(name);
  }
  await pane.getByLabel("Draw number").fill("1431");
  await pane.getByLabel("The question").fill("Does straw give more?");
  await pane.getByLabel("Stop date for all").fill("2027-08-30");
  await pane.getByRole("button", { name: "Draw lots and make the sheet" }).click();
}

async function column(sheet: string, letter: string, count: number): Promise<unknown[]> {
  const rows = Array.from({ length: count }, (_, at) => at + 13);
  return Promise.all(rows.map((row) => value(page, sheet, `${letter}${row}`)));
}

it("from the plan to a drawn list on a sheet of its own, in one click", async () => {
  await layOut(16, ["Bare soil", "Straw"]);
  await expect.poll(() => selected(page)).toBe("Trial plan!E13");
  expect(await column("Trial plan", "C", 16)).toEqual(two?.order);
  expect(await column("Trial plan", "D", 16)).toEqual(two?.labels);
  await settled(page);
  expect(await value(page, "Trial plan", "E12")).toBe("Total per plant (g)");
  expect(await value(page, "Trial plan", "E7")).toBe(46_629);
  expect(String(await value(page, "Trial plan", "J6"))).toMatch(/^No answer/);
});

it("a harvest typed down the list is compared, bed by bed, with R's numbers", async () => {
  // from the pane's button back to the cells
  await page.keyboard.press("F6");
  for (const weight of grownOn(two?.order ?? [])) await type(page, String(weight));
  await settled(page);
  expect(await value(page, "Trial plan", "J6")).toBe("Up, enough to matter");
  near("change", Number(await value(page, "Trial plan", "J7")), harvest.cases.pairedChange, { relative: 1e-9 });
  expect(String(await value(page, "Trial plan", "J10"))).toMatch(/straw/i);
});

it("the pane explains the record sheet's answer", async () => {
  await page.evaluate(() => fairbedPractice.port.select("Trial plan", "J6"));
  await pane.getByRole("tab", { name: "Explain" }).click();
  await expect.poll(async () => (await pane.textContent()) ?? "").toContain("Straw gave");
  await pane.getByRole("tab", { name: "Plan" }).click();
});

it("the season is told: question, draw number and result, in three lengths and an image", async () => {
  await page.evaluate(() => fairbedPractice.port.select("Trial plan", "J6"));
  await pane.getByRole("tab", { name: "Tell" }).click();
  const told = async () => ((await pane.getByRole("tabpanel").textContent()) ?? "").replaceAll("\u00a0", " ");
  await expect.poll(told).toContain("Does straw give more? We drew lots for which plant got what (draw number 1431).");
  expect(await told()).toContain("Straw and Bare soil stood side by side in 7 beds.");
  const download = page.waitForEvent("download");
  await pane.getByRole("button", { name: "Save the picture" }).click();
  const saved = readFileSync(await (await download).path());
  // a PNG's width and height stand in its first chunk
  expect([saved.readUInt32BE(16), saved.readUInt32BE(20)]).toEqual([1920, 1080]);
  await pane.getByRole("tab", { name: "Plan" }).click();
});

it("a second layout leaves the first alone, and several treatments get their table", async () => {
  await layOut(32, mulches);
  await expect.poll(() => selected(page)).toBe("Trial plan 2!E13");
  expect(await column("Trial plan 2", "C", 32)).toEqual(four?.order);
  expect(await column("Trial plan", "E", 16)).toEqual(grownOn(two?.order ?? []));
  for (const [at, weight] of grownOn(four?.order ?? []).entries()) {
    await put(page, ["Trial plan 2", `E${13 + at}`], weight);
  }
  expect(await value(page, "Trial plan 2", "J6")).toBe("Straw up; 2 not settled");
  // METHODS 11, by R: straw against bare soil, beds removed
  expect(await value(page, "Trial plan 2", "H25")).toBe("Straw");
  near("change", Number(await value(page, "Trial plan 2", "I25")), 0.4552, { absolute: 5e-5 });
});
