import type { Locator, Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { openPracticePage, ready, select, type, value } from "./practicePage";

let page: Page;
let pane: Locator;

beforeAll(async () => {
  page = await openPracticePage();
  pane = page.locator("#pane");
  await pane.getByRole("tab", { name: "Trial" }).click();
});

const question = (name: RegExp) => pane.getByRole("group", { name });

it("the trial's notes are typed and answered by keyboard alone", async () => {
  await pane.getByLabel("Crop and variety").focus();
  for (const text of ["courgettes", "harvest per plant", "grams", "Marlpit Corner", "2023"]) {
    await page.keyboard.type(text);
    await page.keyboard.press("Tab");
  }
  await pane.getByLabel("Change worth acting on, in %").focus();
  await page.keyboard.type("10");
  // past the choice of the sheet
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Space");
  expect(
    await question(/only one thing/)
      .getByLabel("Yes")
      .isChecked(),
  ).toBe(true);
  await page.keyboard.press("ArrowRight");
  expect(
    await question(/only one thing/)
      .getByLabel("No", { exact: true })
      .isChecked(),
  ).toBe(true);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Space");
  expect(
    await question(/drawn by lot/)
      .getByLabel("Yes")
      .isChecked(),
  ).toBe(true);
  await expect.poll(() => pane.getByText("2 of 11 answered", { exact: true }).isVisible()).toBe(true);
  await expect.poll(() => pane.getByText("Kept with this workbook.").isVisible()).toBe(true);
});

it("what was typed wrong is taken back as in any field, and the cells keep what was typed into them", async () => {
  await select(page, "Try your own", "K20");
  // from the pane to the cells
  await page.keyboard.press("F6");
  await type(page, "12");
  expect(await value(page, "Try your own", "K20")).toBe(12);
  const place = pane.getByLabel("Place");
  await place.focus();
  await page.keyboard.press("End");
  await page.keyboard.type(" East");
  await expect
    .poll(() => page.evaluate(async () => (await fairbedPractice.port.notes()).place))
    .toBe("Marlpit Corner East");
  await page.keyboard.press("Control+Z");
  await expect.poll(() => place.inputValue()).not.toBe("Marlpit Corner East");
  expect(await value(page, "Try your own", "K20")).toBe(12);
  await place.fill("Marlpit Corner");
  await place.blur();
});

it("answers and texts survive a reload of the page", async () => {
  await page.reload();
  await ready(page);
  await pane.getByRole("tab", { name: "Trial" }).click();
  await expect.poll(() => pane.getByLabel("Crop and variety").inputValue()).toBe("courgettes");
  expect(await pane.getByLabel("Place").inputValue()).toBe("Marlpit Corner");
  expect(await pane.getByLabel("Change worth acting on, in %").inputValue()).toBe("10");
  expect(
    await question(/only one thing/)
      .getByLabel("No", { exact: true })
      .isChecked(),
  ).toBe(true);
  expect(
    await question(/one batch/)
      .getByRole("radio", { checked: true })
      .count(),
  ).toBe(0);
  expect(await pane.getByText("2 of 11 answered", { exact: true }).isVisible()).toBe(true);
});

it("Explain says what was measured, and warns of what was answered", async () => {
  await question(/drawn by lot/)
    .getByLabel("No", { exact: true })
    .check();
  await page.evaluate(() => fairbedPractice.port.select("The trial", "H3"));
  await pane.getByRole("tab", { name: "Explain" }).click();
  const told = async () => (await pane.getByRole("tabpanel").textContent()) ?? "";
  await expect.poll(told).toContain("Our trial: grams of courgettes per plant, Marlpit Corner, 2023.");
  expect(await told()).toContain("Straw gave 4350 grams a plant");
  expect(await told()).toContain("Several things changed at once; the trial cannot say which did it.");
});

it("notes about another sheet stay untold, and come back", async () => {
  await pane.getByRole("tab", { name: "Trial" }).click();
  await pane.getByLabel("These notes are about").selectOption("Many crops");
  await pane.getByRole("tab", { name: "Explain" }).click();
  await expect.poll(async () => (await pane.getByRole("tabpanel").textContent()) ?? "").not.toContain("Marlpit Corner");
  await pane.getByRole("tab", { name: "Trial" }).click();
  await pane.getByLabel("These notes are about").selectOption("The trial");
});

it("Tell fills its sentences with them", async () => {
  await page.evaluate(() => fairbedPractice.port.select("The trial", "H3"));
  await pane.getByRole("tab", { name: "Tell" }).click();
  const told = async () => (await pane.getByRole("tabpanel").textContent()) ?? "";
  await expect.poll(told).toContain("We grew courgettes at Marlpit Corner in 2023.");
});
