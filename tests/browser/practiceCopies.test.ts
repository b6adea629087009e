import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { excelFile, sheetPart, texts } from "../files/excelFile";
import { choose, downloaded, harvestFile, large, opened, openFilesPage, says } from "./chosenFiles";
import { openPracticePage, put, settled, value } from "./practicePage";

let page: Page;

beforeAll(async () => {
  page = await openFilesPage();
});

it("answers the pane's and the grid's keys while it opens and saves, and saving can be cancelled", async () => {
  const own = await openPracticePage();
  const [downloads, served]: [string[], boolean[]] = [[], []];
  own.on("download", (download) => downloads.push(download.suggestedFilename()));
  let choosers = 0;
  own.on("filechooser", () => {
    choosers += 1;
  });
  const isBusy = () => own.locator("#file-cancel").isVisible();
  await choose(own, "large.xlsx", large());
  await own.getByRole("tab", { name: "Plan", exact: true }).click();
  served.push(await isBusy());
  await opened(own, "large.xlsx");
  await put(own, ["S", "B1"], 7);
  await own.locator("#file-save").click();
  await own.getByRole("tab", { name: "Explain", exact: true }).click();
  await own.keyboard.press("Control+o");
  served.push(await isBusy());
  await own.locator("#file-cancel").click();
  await says(own, /^Cancelled\. Nothing has changed\.$/);
  expect(served, "still at work when the tab had changed").toEqual([true, true]);
  expect(choosers, "no second file while the first is at work").toBe(0);
  expect(await own.getByRole("tab", { name: "Explain", exact: true }).getAttribute("aria-selected")).toBe("true");
  expect(await value(own, "S", "B1")).toBe(7);
  expect(await own.locator("#file-forget").isVisible(), "the change is still unsaved").toBe(true);
  expect(downloads).toEqual([]);
  await own.close({ runBeforeUnload: false });
});

it("what is changed while a copy is saved stays unsaved, and is said not to be in the copy", async () => {
  const own = await openPracticePage();
  await choose(own, "large.xlsx", large());
  await opened(own, "large.xlsx");
  await put(own, ["S", "B1"], 7);
  const downloading = own.waitForEvent("download");
  await own.evaluate(async () => {
    document.querySelector<HTMLElement>("#file-save")?.click();
    await fairbedPractice.put("S", "B1", 8);
  });
  const copy = texts(readFileSync(await (await downloading).path()));
  expect(copy["xl/worksheets/sheet1.xml"]).toContain('<c r="B1"><v>7</v></c>');
  await says(own, /^Saved as large copy\.xlsx\..* What you changed meanwhile is not in it\.$/);
  expect(await own.locator("#file-forget").isVisible()).toBe(true);
  await own.locator("#file-save").click();
  await says(own, /^Saved as large copy\.xlsx\. The file you opened is as it was\.$/);
  expect(await own.locator("#file-forget").isHidden()).toBe(true);
  await own.close();
});

it("refuses before it happens what the file could not follow", async () => {
  await choose(page, "Harvest.xlsx", harvestFile);
  await says(page, /^Opened/);
  await page.evaluate(() => fairbedPractice.insertRow("Harvest", 1));
  await says(page, /^Cells cannot be moved here: the file has rules for cells/);
  expect(await value(page, "Harvest", "A2")).toBe(10);
});

it("saves inserted rows where nothing in the file is tied to its place", async () => {
  const plain = sheetPart(
    '<row r="1"><c r="A1" s="1"><v>1</v></c></row><row r="2"><c r="A2" s="3"><v>0.5</v></c></row>' +
      '<row r="3"><c r="A3"><f>SUM(A1:A2)</f><v>1.5</v></c></row>',
  );
  await choose(page, "plain.xlsx", excelFile({ sheets: [["S", plain]] }));
  await opened(page, "plain.xlsx");
  await page.evaluate(() => fairbedPractice.insertRow("S", 2));
  await put(page, ["S", "A2"], 4);
  const copy = await downloaded(page, "#file-save");
  const xml = texts(copy.bytes)["xl/worksheets/sheet1.xml"];
  expect(xml).toContain('<row r="1"><c r="A1" s="1"><v>1</v></c></row>');
  expect(xml).toMatch(/<row r="2"><c r="A2"(?: s="1")?><v>4<\/v><\/c><\/row>/);
  expect(xml).toContain('<row r="3"><c r="A3" s="3"><v>0.5</v></c></row>');
  expect(xml).toContain('<row r="4"><c r="A4"><f>SUM(A1:A3)</f><v>5.5</v></c></row>');
});

it("saves inserted columns as well", async () => {
  const plain = sheetPart(
    '<row r="1"><c r="A1"><v>2</v></c><c r="B1" s="3"><v>0.5</v></c><c r="C1"><f>SUM(A1:B1)</f><v>2.5</v></c></row>',
  );
  await choose(page, "wide.xlsx", excelFile({ sheets: [["S", plain]] }));
  await opened(page, "wide.xlsx");
  await page.evaluate(() => fairbedPractice.insertColumn("S", 2));
  await put(page, ["S", "B1"], 4);
  const copy = await downloaded(page, "#file-save");
  const xml = texts(copy.bytes)["xl/worksheets/sheet1.xml"];
  expect(xml).toMatch(/<c r="A1"><v>2<\/v><\/c><c r="B1"(?: s="\d+")?><v>4<\/v><\/c><c r="C1" s="3"><v>0\.5<\/v><\/c>/);
  expect(xml).toContain('<c r="D1"><f>SUM(A1:C1)</f><v>6.5</v></c>');
});

it("saves by the keyboard alone, and adds sheets to the copy", async () => {
  await choose(page, "Harvest.xlsx", harvestFile);
  await opened(page, "Harvest.xlsx");
  await page.evaluate(() => fairbedPractice.addSheet("Report"));
  await put(page, ["Report", "B3"], "kept");
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Control+s")]);
  const copy = texts(readFileSync(await download.path()));
  expect(copy["xl/workbook.xml"]).toContain('<sheet name="Report" sheetId="3"');
  expect(copy["xl/worksheets/sheet3.xml"]).toContain("kept");
});

it("saves a sheet that the pane made: its text, date, formula, formats and widths", async () => {
  await page.evaluate(() =>
    fairbedPractice.port.add({
      name: "Record",
      widths: [210],
      blocks: [
        {
          address: "A1",
          rows: [
            [
              { kind: "text", content: "=1+1", format: "General", bold: true },
              { kind: "date", content: 46145, format: "yyyy-mm-dd", bold: false },
              { kind: "formula", content: "=FAIRBED.UPDOWN(10,15)", format: "0.0%", bold: false },
            ],
          ],
        },
      ],
    }),
  );
  await settled(page);
  expect(await value(page, "Record", "C1")).toBe(0.5);
  const copy = await downloaded(page, "#file-save");
  const sheet = texts(copy.bytes)["xl/worksheets/sheet4.xml"];
  expect(sheet).toContain("_xldudf_FAIRBED_UPDOWN(10,15)</f><v>0.5</v>");
  await choose(page, "Recorded.xlsx", copy.bytes);
  await opened(page, "Recorded.xlsx");
  expect(await value(page, "Record", "A1")).toBe("=1+1");
  const shown = () => ["B1", "C1"].map((address) => fairbedPractice.shown("Record", address));
  expect(await page.evaluate(shown)).toEqual(["2026-05-03", "50.0%"]);
  // ECMA-376, 18.3.1.13: 210 pixels in digits of 7
  expect(sheet).toMatch(/<cols><col [^>]*width="30"[^>]*min="1" max="1"/);
});
