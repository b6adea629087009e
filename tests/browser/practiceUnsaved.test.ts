import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { excelFile, sheetPart, texts } from "../files/excelFile";
import { choose, downloaded, harvestFile, opened, openFilesPage, says } from "./chosenFiles";
import { openPracticePage, put, ready, select, settled, type, value } from "./practicePage";

let page: Page;

beforeAll(async () => {
  page = await openFilesPage();
});

it("a name given to cells is unsaved work like any other, and is in the copy", async () => {
  await choose(
    page,
    "plain.xlsx",
    excelFile({ sheets: [["S", sheetPart('<row r="1"><c r="A1"><v>4</v></c></row>')]] }),
  );
  await opened(page, "plain.xlsx");
  expect(await page.locator("#file-forget").isHidden()).toBe(true);
  await page.evaluate(() => fairbedPractice.nameCells("straw", "'S'!$A$1:$A$1"));
  await expect.poll(() => page.locator("#file-forget").isVisible()).toBe(true);
  const copy = await downloaded(page, "#file-save");
  expect(texts(copy.bytes)["xl/workbook.xml"]).toContain('<definedName name="straw">');
  await choose(page, "Harvest.xlsx", harvestFile);
  await opened(page, "Harvest.xlsx");
});

it("brings unsaved work back after a reload, asks before leaving, and forgets it on a button", async () => {
  await select(page, "Harvest", "A2");
  await type(page, "13");
  await expect.poll(() => kept(page), { timeout: 10_000 }).toBe(1);
  const asked: string[] = [];
  page.on("dialog", (dialog) => asked.push(dialog.type()));
  await page.reload();
  await ready(page);
  expect(asked).toEqual(["beforeunload"]);
  await says(page, /^Your work that was not saved is back\.$/);
  expect(await value(page, "Harvest", "A2")).toBe(13);
  await settled(page);
  await page.locator("#file-forget").click();
  await says(page, /no longer kept/);
  await expect.poll(() => kept(page)).toBe(0);
  // the work is still unsaved in the cells: opening another file asks first
  asked.length = 0;
  await choose(page, "weights.csv", new TextEncoder().encode("bed,kg\n1,2.5\n"));
  await says(page, /^Opened/);
  expect(asked).toEqual(["confirm"]);
});

it("starts also where an older page kept work in a form that is not known any more", async () => {
  const own = await openPracticePage();
  await own.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open("fairbed-practice", 1);
        opening.onsuccess = () => {
          const keeping = opening.result.transaction("unsaved", "readwrite");
          keeping.objectStore("unsaved").put({ file: { name: "Old.xlsx" }, present: { pages: [] } }, "work");
          keeping.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await own.reload();
  await ready(own);
  await says(own, /^Work that was not saved on your last visit cannot be shown\.$/);
  expect(await put(own, ["Try your own", "A2"], 5)).toBe(5);
  await own.close({ runBeforeUnload: false });
});

/** How many works the browser keeps. */
function kept(on: Page): Promise<number> {
  return on.evaluate(
    () =>
      new Promise<number>((resolve) => {
        const opening = indexedDB.open("fairbed-practice", 1);
        opening.onsuccess = () => {
          const counting = opening.result.transaction("unsaved").objectStore("unsaved").count();
          counting.onsuccess = () => {
            opening.result.close();
            resolve(counting.result);
          };
        };
      }),
  );
}
