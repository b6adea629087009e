import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";
import { beforeAll, expect, it } from "vitest";
import { excelFile, sheetPart, texts } from "../files/excelFile";
import { choose, downloaded, harvestFile, large, opened, openFilesPage, says } from "./chosenFiles";
import { put, select, settled, type, value } from "./practicePage";

let page: Page;

beforeAll(async () => {
  page = await openFilesPage();
});

it("opens a workbook, says that nothing was uploaded, and what it leaves alone", async () => {
  await choose(page, "Harvest.xlsx", harvestFile);
  await says(page, /^Opened on this computer; nothing was uploaded\. .*: Harvest!E1\.$/);
  expect(await page.locator("#file-name").textContent()).toBe("Harvest.xlsx.");
  expect(await value(page, "Harvest", "A1")).toBe("Bare");
  expect(await value(page, "Harvest", "C1")).toBe(0.5);
  expect(await value(page, "Harvest", "D1")).toBe(42);
  expect(await value(page, "Harvest", "E1")).toBe(7);
  expect(await page.evaluate(() => fairbedPractice.shown("Harvest", "F1"))).toBe("2026-05-03");
});

it("has our functions live in it: an edit changes their answer, and the copy differs by that only", async () => {
  await select(page, "Harvest", "B2");
  await type(page, "20");
  expect(await value(page, "Harvest", "C1")).toBe(1);
  const copy = await downloaded(page, "#file-save");
  expect(copy.name).toBe("Harvest copy.xlsx");
  await says(page, /^Saved as Harvest copy\.xlsx\./);
  const [before, after] = [texts(harvestFile), texts(copy.bytes)];
  const differing = Object.keys(after).filter((name) => after[name] !== before[name]);
  // the call that only Excel can work out may be out of date now: the workbook's part asks for it
  expect(differing.sort()).toEqual(["xl/workbook.xml", "xl/worksheets/sheet1.xml"]);
  const expected = before["xl/worksheets/sheet1.xml"]
    ?.replace('<c r="B2"><v>15</v></c>', '<c r="B2"><v>20</v></c>')
    .replace("(A2,B2)</f><v>0.5</v>", "(A2,B2)</f><v>1</v>");
  expect(after["xl/worksheets/sheet1.xml"]).toBe(expected);
});

it("opens its own copy again", async () => {
  await put(page, ["Harvest", "G1"], '=FAIRBED.COMPARETWO(A1:A5,B1:B5,"table")');
  const words = await value(page, "Harvest", "G1");
  const copy = await downloaded(page, "#file-save");
  await choose(page, "Again.xlsx", copy.bytes);
  await opened(page, "Again.xlsx");
  expect(await value(page, "Harvest", "B2")).toBe(20);
  expect(await value(page, "Harvest", "G1")).toBe(words);
  expect(await value(page, "Harvest", "H2")).not.toBe(null);
});

it("saves a sheet as .csv, and opens one", async () => {
  const csv = await downloaded(page, "#file-csv");
  expect(csv.name).toBe("Harvest.csv");
  expect(new TextDecoder().decode(csv.bytes)).toMatch(/^Bare,Straw,1,42,7,2026-05-03,/);
  await choose(page, "weights.csv", new TextEncoder().encode("bed,kg\n=1+1,2.5\n"));
  await opened(page, "weights.csv");
  expect(await value(page, "weights", "A2")).toBe("=1+1");
  expect(await value(page, "weights", "B2")).toBe(2.5);
});

it("opens a file that is dropped on the page", async () => {
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.items.add(new File(["dropped\n3"], "dropped.csv"));
    document.querySelector("#grid")?.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true }));
  });
  await opened(page, "dropped.csv");
  expect(await value(page, "dropped", "A2")).toBe(3);
});

it("refuses with a sentence, and leaves what is open as it was", async () => {
  await choose(page, "locked.xlsx", Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0, 0, 0, 0]));
  await says(page, /^This is a workbook of the old kind, \.xls\./);
  await choose(page, "damaged.xlsx", harvestFile.slice(0, 500));
  await says(page, /^This file is damaged/);
  expect(await value(page, "dropped", "A2")).toBe(3);
});

it("can be cancelled while it opens", async () => {
  await choose(page, "large.xlsx", large());
  await page.locator("#file-cancel").click();
  await says(page, /^Cancelled\. Nothing has changed\.$/);
  expect(await page.locator("#file-cancel").isHidden()).toBe(true);
  expect(await value(page, "dropped", "A2")).toBe(3);
});

it("says so when a chosen file is gone", async () => {
  const name = await page.locator("#file-name").textContent();
  await page.evaluate(() => {
    const { arrayBuffer } = Blob.prototype;
    Blob.prototype.arrayBuffer = async () => {
      Blob.prototype.arrayBuffer = arrayBuffer;
      throw new DOMException("gone", "NotReadableError");
    };
  });
  await choose(page, "gone.csv", Uint8Array.from([49]));
  await says(page, /^gone\.csv cannot be read\./);
  expect(await page.locator("#file-name").textContent()).toBe(name);
});

it("shows scripts and links to other places as texts: nothing runs, nothing is fetched", async () => {
  const [asked, fetched]: [string[], string[]] = [[], []];
  const onDialog = (dialog: { type(): string }) => asked.push(dialog.type());
  const onRequest = (request: { url(): string }) => fetched.push(request.url());
  page.on("dialog", onDialog).on("request", onRequest);
  const outside = "https://elsewhere.example/table.xlsx";
  const rows =
    '<row r="1"><c r="A1" t="inlineStr"><is><t>&lt;img src=x onerror=alert(1)&gt;</t></is></c>' +
    `<c r="B1"><f>[1]Sheet1!A1</f><v>7</v></c><c r="C1"><f>HYPERLINK("${outside}","see")</f><v>see</v></c></row>`;
  const parts = {
    "xl/externalLinks/externalLink1.xml": '<externalLink><externalBook r:id="rId1"/></externalLink>',
    "xl/externalLinks/_rels/externalLink1.xml.rels": `<Relationships><Relationship Id="rId1" TargetMode="External" Target="${outside}"/></Relationships>`,
  };
  const name = "&lt;img src=x onerror=alert(2)&gt;";
  const inWorkbook = '<externalReferences><externalReference r:id="rId9"/></externalReferences>';
  await choose(
    page,
    "odd <img src=x onerror=alert(3)>.xlsx",
    excelFile({ sheets: [[name, sheetPart(rows)]], inWorkbook, parts }),
  );
  await says(page, /^Opened/);
  const sheet = "<img src=x onerror=alert(2)>";
  expect(await value(page, sheet, "A1")).toBe("<img src=x onerror=alert(1)>");
  expect(await value(page, sheet, "B1")).toBe(7);
  await select(page, sheet, "A1");
  await settled(page);
  page.off("dialog", onDialog).off("request", onRequest);
  expect(asked).toEqual([]);
  expect(fetched.filter((url) => !url.startsWith(new URL(page.url()).origin) && !url.startsWith("blob:"))).toEqual([]);
});

it.each([
  ["its button", "Enter"],
  ["the keys that open files", "Control+o"],
])("opens by the keyboard alone, with %s", async (_, key) => {
  if (key === "Enter") await page.locator("#file-open").focus();
  const choosing = page.waitForEvent("filechooser");
  // the browser hands its chooser over to the test only once it has been told to
  await settled(page);
  await page.keyboard.press(key);
  const name = `by ${key}.csv`;
  await (await choosing).setFiles({ name, mimeType: "text/csv", buffer: Buffer.from("kg\n4\n") });
  await opened(page, name);
});

it.each(["light", "dark"] as const)("axe finds nothing wrong with the bar of files, %s", async (scheme) => {
  await page.emulateMedia({ colorScheme: scheme });
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
  const { violations } = await page.evaluate(() =>
    (globalThis as unknown as { axe: { run: (where: string) => Promise<AxeResults> } }).axe.run("header.bar"),
  );
  expect(violations.map(({ id }) => id)).toEqual([]);
});
